package boltlore.cli;

import boltlore.book.By;
import boltlore.book.db.Book;
import boltlore.book.db.BookLost;
import boltlore.book.db.Place;
import boltlore.book.db.Written;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import picocli.CommandLine.Mixin;

/** What all commands on the book share: which book, who works, what is told where the book cannot be had. */
abstract class BookCommand extends RoomCommand {

    @Mixin
    private BookOption option = new BookOption();

    private boolean unopened;

    /** The command's answer; faulty where what was asked cannot be. */
    abstract Outcome<Integer> answer(Screen screen, Place place);

    @Override
    final int run(Screen screen) {
        try {
            Outcome<Integer> outcome = option.place().then(place -> answer(screen, place));
            if (unopened) {
                screen.flush();
                return refused(outcome.faults(), Exit.NO_BOOK);
            }
            return done(screen, outcome);
        } catch (BookLost lost) {
            screen.flush();
            return refused(List.of(lost.fault()), Exit.NO_BOOK);
        }
    }

    /** Works in the book that is there. */
    <T> Outcome<T> inBook(Place place, Function<Book, Outcome<T>> work) {
        return in(Book.open(place), work);
    }

    /** Works in the book, which is begun where there is none. */
    <T> Outcome<T> inBookOrNew(Place place, Function<Book, Outcome<T>> work) {
        return in(Book.openOrBegin(place), work);
    }

    private <T> Outcome<T> in(Outcome<Book> opened, Function<Book, Outcome<T>> work) {
        unopened = !opened.faults().isEmpty();
        return opened.then(found -> {
            try (Book book = found) {
                return work.apply(book);
            }
        });
    }

    /** What a command on one order works with; the reason may be empty. */
    record OnOrder(Book book, By by, String order, String reason) {}

    /** Works on one order of the book that is there. */
    Outcome<Integer> onOrder(
            Place place,
            OrderCommand.Numbered order,
            OrderCommand.Reason reason,
            Function<OnOrder, Outcome<Integer>> work) {
        return order.read()
                .then(name -> reason.read()
                        .then(why ->
                                by().then(by -> inBook(place, book -> work.apply(new OnOrder(book, by, name, why))))));
    }

    Outcome<By> by() {
        return option.by();
    }

    /** The day by the clock that the entries of this command have. */
    LocalDate today() {
        return option.today();
    }

    /** Tells what stands in the book now, and what is to be said of the desk's clock. */
    <T> Outcome<Integer> written(Screen screen, Written<T> written, Function<T, JsonOut> asJson, Consumer<T> asText) {
        answer(screen, written.value(), asJson, asText);
        if (!written.clock().isEmpty()) {
            screen.flush();
            aside().println(written.clock());
        }
        return Outcome.sound(Exit.OK);
    }

    <T> void answer(Screen screen, T value, Function<T, JsonOut> asJson, Consumer<T> asText) {
        if (json()) {
            screen.line(asJson.apply(value).written().stripTrailing());
        } else {
            asText.accept(value);
        }
    }
}
