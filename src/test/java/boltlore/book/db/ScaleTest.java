package boltlore.book.db;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A smaller book of the same make as the one of the README: questions take no longer because it grows. */
class ScaleTest {

    private static final long SEED = 7;
    private static final double MOST_MS = 200;
    private static final double MOST_TO_CONFIRM_MS = 100;

    /** Below this a clock tells more of the machine than of the book. */
    private static final double LITTLE_MS = 60;

    private static final int STEEPEST = 3;

    @TempDir
    private Path folder;

    private int books;

    @ParameterizedTest
    @EnumSource
    void questions_stay_quick_while_the_book_grows_fivefold(BookTest.Kept kept) {
        Map<String, Double> small = measured(kept, 200, 4_000);
        Map<String, Double> large = measured(kept, 1_000, 20_000);
        large.forEach((question, ms) -> {
            assertThat(ms).as(question).isLessThan(question.startsWith("confirming") ? MOST_TO_CONFIRM_MS : MOST_MS);
            assertThat(ms).as(question).isLessThan(Math.max(LITTLE_MS, STEEPEST * small.get(question)));
        });
    }

    private Map<String, Double> measured(BookTest.Kept kept, int orders, int entries) {
        Place place = kept == BookTest.Kept.IN_FILE
                ? new Place.InFile(folder.resolve("book" + ++books + ".db"))
                : new Place.OnServer(Server.running().database());
        Scale scale = new Scale(orders, 400, entries, SEED);
        try (Book book = ((Outcome.Sound<Book>) Book.openOrBegin(place)).value()) {
            scale.fill(book);
            assertThat(Tables.remade(book, false)).isEqualTo(Outcome.sound(List.of()));
            return scale.measure(book);
        }
    }

    @Test
    void a_server_s_book_that_is_copied_from_a_file_holds_what_the_file_holds() throws Exception {
        Place.InFile file = new Place.InFile(folder.resolve("filled.db"));
        Place server = new Place.OnServer(Server.running().database());
        try (Book filled = ((Outcome.Sound<Book>) Book.openOrBegin(file)).value();
                Book copied = ((Outcome.Sound<Book>) Book.openOrBegin(server)).value()) {
            new Scale(60, 20, 600, SEED).fill(filled);
            TableCopy.copy(file, copied);
            assertThat(Tables.of(copied)).isEqualTo(Tables.of(filled));
            assertThat(Tables.remade(copied, false)).isEqualTo(Outcome.sound(List.of()));
        }
    }

    @ParameterizedTest
    @EnumSource
    void desks_that_write_at_once_lose_nothing(BookTest.Kept kept) {
        Place place = kept == BookTest.Kept.IN_FILE
                ? new Place.InFile(folder.resolve("desks.db"))
                : new Place.OnServer(Server.running().database());
        try (Book book = ((Outcome.Sound<Book>) Book.openOrBegin(place)).value()) {
            new Scale(50, 20, 400, SEED).fill(book);
            Desks desks = Desks.writing(place, 10, 3);
            assertThat(desks.written()).as(desks.toString()).isEqualTo(30);
            assertThat(desks.there()).as(desks.toString()).isEqualTo(30);
            assertThat(Tables.remade(book, false)).isEqualTo(Outcome.sound(List.of()));
        }
    }
}
