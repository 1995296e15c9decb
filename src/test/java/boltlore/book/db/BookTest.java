package boltlore.book.db;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boltlore.book.By;
import boltlore.book.Entry;
import boltlore.book.OrderHappening;
import boltlore.book.OrderState;
import boltlore.book.Stamp;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What every book keeps to, in a file and on a server. */
class BookTest {

    private static final Instant MORNING = Instant.parse("2026-11-30T08:00:00Z");

    @TempDir
    private Path folder;

    enum Kept {
        IN_FILE,
        ON_SERVER
    }

    private int files;

    private Book book(Kept kept) {
        Place place = kept == Kept.IN_FILE
                ? new Place.InFile(folder.resolve("book" + ++files + ".db"))
                : new Place.OnServer(Server.running().database());
        return sound(Book.openOrBegin(place));
    }

    private static <T> T sound(Outcome<T> outcome) {
        assertThat(outcome.faults()).isEmpty();
        return ((Outcome.Sound<T>) outcome).value();
    }

    private static By at(Instant instant) {
        return new By(instant, LocalDate.of(2026, 11, 30), "office", "Kim");
    }

    private static OrderHappening.Drafted drafted(Writing writing, String order) {
        return new OrderHappening.Drafted(
                order, "pannier-van", "P-2", "", null, new TreeMap<>(), writing.keep(new byte[] {1, 2, 3}));
    }

    private static Outcome<Written<Entry>> draft(Book book, String order) {
        return book.write(at(MORNING), writing -> Outcome.sound(writing.add(drafted(writing, order), "")));
    }

    private static String exported(Book book) {
        StringWriter out = new StringWriter();
        new Transfer(book).export(out);
        return out.toString();
    }

    @ParameterizedTest
    @EnumSource
    void entries_are_numbered_without_a_gap_and_each_follows_the_one_before(Kept kept) {
        try (Book book = book(kept)) {
            draft(book, "A");
            draft(book, "B");
            List<Entry> entries = book.read(reading -> reading.journal().after(0, 100));
            assertThat(entries)
                    .extracting(Entry::kind)
                    .containsExactly("book begun", "person added", "order drafted", "order drafted");
            String chain = Entry.NO_CHAIN;
            for (Entry entry : entries) {
                assertThat(entry.follows(entry.number() - 1, chain)).isTrue();
                chain = entry.chain();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"moved away", "replaced", "its journal taken away"})
    void what_is_written_to_a_file_that_is_not_in_its_place_any_more_is_told_and_not_confirmed(String how)
            throws IOException {
        Path file = folder.resolve("taken.db");
        Path aside = folder.resolve("aside.db");
        Path ahead = folder.resolve("taken.db-wal");
        try (Book book = sound(Book.openOrBegin(new Place.InFile(file)))) {
            draft(book, "A");
            if (how.equals("its journal taken away")) {
                Files.move(ahead, folder.resolve("aside.db-wal"));
            } else {
                Files.move(file, aside);
            }
            if (how.equals("replaced")) {
                Files.copy(aside, file);
            }
            assertThatThrownBy(() -> draft(book, "B"))
                    .isInstanceOf(BookLost.class)
                    .hasMessageContaining("no file any more, or another one");
            assertThatThrownBy(() -> exported(book)).isInstanceOf(BookLost.class);

            if (how.equals("its journal taken away")) {
                Files.move(folder.resolve("aside.db-wal"), ahead);
            } else {
                Files.move(aside, file, StandardCopyOption.REPLACE_EXISTING);
            }
            draft(book, "C");
        }
        try (Book again = sound(Book.open(new Place.InFile(file)))) {
            List<Entry> kept = again.read(reading -> reading.journal().after(0, 100));
            assertThat(kept)
                    .extracting(Entry::kind)
                    .containsExactly("book begun", "person added", "order drafted", "order drafted");
        }
    }

    @ParameterizedTest
    @EnumSource
    void work_that_finds_a_fault_leaves_nothing(Kept kept) {
        try (Book book = book(kept)) {
            draft(book, "A");
            String before = exported(book);
            Outcome<Written<String>> refused = book.write(at(MORNING), writing -> {
                writing.add(drafted(writing, "B"), "");
                writing.keep(new byte[] {9});
                return Outcome.faulty(Fault.of("", "a slip", "none", ""));
            });
            assertThat(refused.faults()).hasSize(1);
            assertThat(exported(book)).isEqualTo(before);
        }
    }

    @ParameterizedTest
    @EnumSource
    void work_that_breaks_off_leaves_nothing(Kept kept) {
        try (Book book = book(kept)) {
            draft(book, "A");
            String before = exported(book);
            try {
                book.write(at(MORNING), writing -> {
                    writing.add(drafted(writing, "B"), "");
                    throw new IllegalStateException("broken off");
                });
            } catch (IllegalStateException brokenOff) {
                assertThat(brokenOff).hasMessage("broken off");
            }
            assertThat(exported(book)).isEqualTo(before);
        }
    }

    @ParameterizedTest
    @EnumSource
    void desks_that_write_at_the_same_time_lose_nothing(Kept kept) throws Exception {
        int desks = 4;
        int each = 10;
        try (Book book = book(kept)) {
            ExecutorService pool = Executors.newFixedThreadPool(desks);
            List<Callable<Boolean>> work = IntStream.range(0, desks)
                    .<Callable<Boolean>>mapToObj(desk -> () -> {
                        for (int i = 0; i < each; i++) {
                            sound(draft(book, "D" + desk + "-" + i));
                        }
                        return true;
                    })
                    .toList();
            for (var done : pool.invokeAll(work)) {
                assertThat(done.get()).isTrue();
            }
            pool.shutdown();
            SortedMap<OrderState, Long> counts =
                    book.read(reading -> reading.orders().counts());
            assertThat(counts).containsEntry(OrderState.DRAFT, 40L);
            assertThat(sound(Tables.remade(book, false))).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_clock_that_goes_backwards_is_kept_and_told(Kept kept) {
        try (Book book = book(kept)) {
            draft(book, "A");
            Instant earlier = MORNING.minusSeconds(3600);
            Written<Entry> written =
                    sound(book.write(at(earlier), writing -> Outcome.sound(writing.add(drafted(writing, "B"), ""))));
            assertThat(written.clock()).contains("is 1 h 0 min or more behind").contains("desk 'office'");
            assertThat(written.value().number()).isEqualTo(4);
            Optional<Entry> last = book.read(reading -> reading.journal().last());
            assertThat(last).map(Entry::stamp).map(Stamp::at).contains(earlier);
            Written<Entry> later = sound(draft(book, "C"));
            assertThat(later.clock()).isEmpty();
            Instant days = MORNING.minusSeconds(3 * 86_400 + 7_200);
            assertThat(sound(book.write(at(days), writing -> Outcome.sound(writing.add(drafted(writing, "D"), ""))))
                            .clock())
                    .contains("is 3 d 2 h or more behind");
        }
    }

    @ParameterizedTest
    @EnumSource
    void export_import_export_gives_the_same_bytes(Kept kept) {
        try (Book book = book(kept)) {
            for (int i = 0; i < 12; i++) {
                draft(book, "A" + i);
                int person = i;
                book.write(
                        at(MORNING),
                        writing -> Outcome.sound(writing.addPerson("customer", "Person " + person, new TreeMap<>())));
            }
            String first = exported(book);
            Kept other = kept == Kept.IN_FILE ? Kept.ON_SERVER : Kept.IN_FILE;
            try (Book copy = book(other)) {
                assertThat(sound(new Transfer(copy).read("export", () -> new BufferedReader(new StringReader(first)))))
                        .isEqualTo(26L);
                assertThat(exported(copy)).isEqualTo(first);
                assertThat(Tables.of(copy)).isEqualTo(Tables.of(book));
            }
        }
    }

    @Test
    void an_export_in_which_a_letter_was_changed_is_refused_with_its_line() {
        try (Book book = book(Kept.IN_FILE);
                Book copy = book(Kept.IN_FILE)) {
            draft(book, "A");
            draft(book, "B");
            String changed = exported(book).replace("\"name\": \"B\"", "\"name\": \"X\"");
            Outcome<Long> read = new Transfer(copy).read("export", () -> new BufferedReader(new StringReader(changed)));
            assertThat(read.faults()).hasSize(1);
            assertThat(read.faults().get(0).found()).contains("entry 4 that was changed");
            assertThat(read.faults().get(0).line()).isEqualTo(5);
            Optional<Entry> last = copy.read(reading -> reading.journal().last());
            assertThat(last).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_sum_that_somebody_changed_by_hand_is_found_and_made_anew(Kept kept) {
        try (Book book = book(kept)) {
            draft(book, "A");
            assertThat(sound(Tables.remade(book, false))).isEmpty();
            sound(book.transactionOutcome(
                    true, handle -> Outcome.sound(handle.execute("update customer_order set state = 'shipped'"))));
            assertThat(sound(Tables.remade(book, false))).containsExactly("customer_order");
            assertThat(sound(Tables.remade(book, true))).containsExactly("customer_order");
            assertThat(sound(Tables.remade(book, false))).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void an_entry_that_somebody_changed_by_hand_is_found(Kept kept) {
        try (Book book = book(kept)) {
            draft(book, "A");
            draft(book, "B");
            sound(book.transactionOutcome(
                    true,
                    handle -> Outcome.sound(handle.execute("update journal set reason = 'other' where number = 3"))));
            assertThat(Tables.remade(book, false).faults())
                    .extracting(Fault::file)
                    .contains("entry 3");
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_book_of_a_newer_program_is_refused_in_a_sentence(Kept kept) {
        Place place;
        try (Book book = book(kept)) {
            place = book.place();
            sound(book.transactionOutcome(
                    true,
                    handle -> Outcome.sound(handle.execute(
                            "update book_schema set version = '99' where version = '" + Schema.NEWEST + "'"))));
        }
        assertThat(Book.open(place).faults())
                .extracting(Fault::found)
                .containsExactly("a book of a newer Boltlore (its tables have version 99)");
    }
}
