package boltlore.cli;

import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.db.Reading;
import boltlore.book.orders.Bench;
import boltlore.book.orders.FrozenKits;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import boltlore.measure.Digits;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Commands of the rooms on the book: they work with kits as they were frozen, and with the catalogue of today. */
abstract class FrozenCommand extends BookCommand {

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Mixin
    private OrderCommand.Reason reason = new OrderCommand.Reason();

    Outcome<String> reason() {
        return reason.read();
    }

    /** Works in the book that is there, with the catalogue as it is. */
    Outcome<Integer> inStores(Place place, BiFunction<Book, Catalogue, Outcome<Integer>> work) {
        return catalogue.read().then(read -> inBook(place, book -> work.apply(book, read)));
    }

    /** Works with kits as they were frozen. */
    <T> Outcome<T> frozen(Book book, Catalogue read, BiFunction<Reading, FrozenKits, Outcome<T>> work) {
        return book.read(
                reading -> FrozenKits.in(reading, bench(read), today()).then(kits -> work.apply(reading, kits)));
    }

    /** That catalogue, ready for work on orders. */
    Bench bench(Catalogue read) {
        return Bench.of(read, catalogue.folder());
    }

    /** The kit of one order. */
    Outcome<KitInWork> kit(Book book, Catalogue read, String order) {
        return frozen(book, read, (reading, kits) -> kits.of(List.of(order)).then(all -> Outcome.sound(all.get(0))));
    }

    /** The same, sorted and sifted as it is asked for. */
    <R> Outcome<Integer> listed(
            Screen screen,
            Listing listing,
            List<R> rows,
            Function<R, JsonOut> asJson,
            Function<R, String> asText,
            String none) {
        return listing.of(rows, asJson).then(asked -> told(screen, asked, asJson, asText, none));
    }

    private <R> Outcome<Integer> told(
            Screen screen, List<R> rows, Function<R, JsonOut> asJson, Function<R, String> asText, String none) {
        answer(screen, rows, all -> JsonOut.list(all, asJson), all -> {
            all.forEach(row -> asText.apply(row)
                    .lines()
                    .forEach(line -> screen.wrapped(line.startsWith(" ") ? 2 : 0, line.strip())));
            if (all.isEmpty()) {
                screen.wrapped(0, none);
            }
        });
        return Outcome.sound(Exit.OK);
    }

    /** What lies in the stores, as one says it on the command line. */
    static final class HeldSaid {

        @Option(
                names = "--finish",
                paramLabel = "FINISH",
                description = "In that finish; bare or not coated without it.")
        private String finish = "";

        @Option(names = "--lot", paramLabel = "LOT", description = "Of that lot; of a cut part the heat of its bar.")
        private String lot = "";

        @Option(
                names = "--serial",
                paramLabel = "NUMBER",
                split = ",",
                description = "Serial number of each piece; more with commas, or the option again.")
        private List<String> serials = new ArrayList<>();

        @Option(names = "--bin", paramLabel = "BIN", description = "In that bin; without it the part's own.")
        private String bin = "";

        /** Finish, lot, bin, each as it may stand in the book. */
        record Read(String finish, String lot, List<String> serials, String bin) {}

        Outcome<Read> read() {
            List<Fault> faults = new ArrayList<>();
            serials.forEach(serial -> faults.addAll(line("--serial", serial).faults()));
            Outcome<Read> sound = line("--finish", finish)
                    .then(one -> line("--lot", lot)
                            .then(two -> line("--bin", bin)
                                    .then(three -> Outcome.sound(new Read(one, two, List.copyOf(serials), three)))));
            faults.addAll(sound.faults());
            return faults.isEmpty() ? sound : Outcome.faulty(faults);
        }

        private static Outcome<String> line(String option, String said) {
            return said.isEmpty() ? Outcome.sound("") : Said.text(option, said, TextShape.LINE);
        }
    }

    /** A number as people type it, with a point or a comma: above 0, or 0. */
    static final class Amount implements ITypeConverter<BigDecimal> {
        @Override
        public BigDecimal convert(String typed) {
            String number = typed.strip().replace(',', '.');
            if (!number.matches("[0-9]{1,9}(\\.[0-9]{1,6})?")) {
                throw new TypeConversionException("'" + BookOption.shortened(typed)
                        + "'; expected a number such as 12 or 0.75, with at most 6 decimals");
            }
            return new BigDecimal(number);
        }
    }

    static String plain(BigDecimal number) {
        return Digits.plain(number);
    }

    static Outcome<String> part(String typed) {
        return Said.text("PART", typed, TextShape.PART_NUMBER);
    }

    static Outcome<List<String>> orders(List<String> typed) {
        return Outcome.all(typed.stream()
                .map(name -> Said.text("ORDER", name, TextShape.ORDER_NAME))
                .toList());
    }
}
