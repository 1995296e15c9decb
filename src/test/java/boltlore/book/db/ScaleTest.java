package boltlore.book.db;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.ShopHappening.Coat;
import boltlore.book.Subject;
import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.generic.GenericType;
import org.jdbi.v3.core.statement.SqlLogger;
import org.jdbi.v3.core.statement.StatementContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A smaller book of the same make as the one of the README: questions take no longer because it grows. */
class ScaleTest {

    private static final long SEED = 7;
    private static final double MOST_MS = 200;
    private static final double MOST_TO_CONFIRM_MS = 100;

    /** A new kit goes in with all its lines: 30 to 70 ms on a quiet machine, of which others that test at once take their share. */
    private static final double MOST_TO_FREEZE_MS = 400;

    /** Below this a clock tells more of the machine than of the book. */
    private static final double LITTLE_MS = 60;

    private static final int STEEPEST = 3;
    private static final List<String> GREAT =
            List.of("journal", "built_part", "open_need", "quotation", "order_choice");

    @TempDir
    private Path folder;

    private int books;

    @ParameterizedTest
    @EnumSource
    void questions_stay_quick_while_the_book_grows_fivefold(BookTest.Kept kept) {
        Map<String, Questions.Took> small = measured(kept, 200, 4_000);
        Map<String, Questions.Took> large = measured(kept, 1_000, 20_000);
        large.forEach((question, took) -> {
            double ms = took.middleMs();
            assertThat(ms).as(question).isLessThan(most(question));
            assertThat(ms)
                    .as(question)
                    .isLessThan(Math.max(
                            question.startsWith("freezing") ? MOST_TO_FREEZE_MS : LITTLE_MS,
                            STEEPEST * small.get(question).middleMs()));
        });
    }

    private static double most(String question) {
        if (question.startsWith("freezing")) {
            return MOST_TO_FREEZE_MS;
        }
        return question.contains("confirming") ? MOST_TO_CONFIRM_MS : MOST_MS;
    }

    private Map<String, Questions.Took> measured(BookTest.Kept kept, int orders, int entries) {
        Place place = place(kept);
        Scale scale = new Scale(orders, 400, entries, SEED);
        try (Book book = ((Outcome.Sound<Book>) Book.openOrBegin(place)).value()) {
            scale.fill(book);
            assertThat(Tables.remade(book, false)).isEqualTo(Outcome.sound(List.of()));
            return new Questions(scale, book).measured();
        }
    }

    /** By the server's own count of rows that it read in no order (PostgreSQL's manual, view pg_stat_user_tables). */
    @Test
    void no_question_reads_a_great_table_from_end_to_end() {
        Place place = place(BookTest.Kept.ON_SERVER);
        Scale scale = new Scale(500, 400, 10_000, SEED);
        try (Book book = ((Outcome.Sound<Book>) Book.openOrBegin(place)).value()) {
            scale.fill(book);
        }
        Map<String, Long> filled = readInNoOrder(place);
        try (Book book = ((Outcome.Sound<Book>) Book.openOrBegin(place)).value()) {
            new Questions(scale, book).measured();
        }
        assertThat(readInNoOrder(place)).isEqualTo(filled).containsKey("journal");
    }

    @Test
    void what_is_asked_of_each_order_of_a_list_is_found_by_an_index() {
        try (Book book = ((Outcome.Sound<Book>) Book.openOrBegin(place(BookTest.Kept.IN_FILE))).value()) {
            assertThat(plans(book, reading -> reading.journal().of(new Subject("order", "SC-1")))
                            + plans(book, reading -> reading.orders().find("SC-1"))
                            + plans(book, reading -> reading.orders().quotations("SC-1"))
                            + plans(book, reading -> reading.orders().choices("SC-1"))
                            + plans(book, reading -> reading.shop().pieces(List.of(), "SC-1"))
                            + plans(book, reading -> reading.shop().records("SC-1"))
                            + plans(book, reading -> reading.stock().issuedTo("SC-1"))
                            + plans(book, reading -> reading.needs().of("SC-1"))
                            + plans(book, reading -> reading.asBuilt().parts("SC-1")))
                    .contains("SEARCH")
                    .doesNotContain("SCAN");
            assertThat(plans(book, reading -> reading.shop().pieces(List.of(), "SC-1")))
                    .contains("coat_piece_order");
            assertThat(plans(book, reading -> reading.shop().pieces(List.of(Coat.HUNG), "")))
                    .contains("coat_piece_state");
            assertThat(plans(book, reading -> reading.needs().lacking(1))).contains("SCAN");
        }
    }

    /** How SQLite means to answer each query (its documentation, page 'EXPLAIN QUERY PLAN'). */
    private static String plans(Book book, Function<Reading, Object> question) {
        Outcome<String> told = book.transactionOutcome(false, handle -> {
            List<String> asked = new ArrayList<>();
            handle.setSqlLogger(logged(asked));
            assertThat(question.apply(new Reading(handle))).isNotNull();
            handle.setSqlLogger(SqlLogger.NOP_SQL_LOGGER);
            return Outcome.sound(asked.stream()
                    .map(sql -> sql + " " + details(handle, sql))
                    .collect(Collectors.joining("\n", "", "\n")));
        });
        return ((Outcome.Sound<String>) told).value();
    }

    private static SqlLogger logged(List<String> asked) {
        return new SqlLogger() {
            @Override
            public void logAfterExecution(StatementContext context) {
                asked.add(context.getParsedSql().getSql());
            }
        };
    }

    private static List<String> details(Handle handle, String sql) {
        try (var rows = handle.getConnection().createStatement().executeQuery("explain query plan " + sql)) {
            List<String> details = new ArrayList<>();
            while (rows.next()) {
                details.add(rows.getString("detail"));
            }
            return details;
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A connection tells what it has read when it is closed. */
    private static Map<String, Long> readInNoOrder(Place place) {
        try (Book book = ((Outcome.Sound<Book>) Book.openOrBegin(place)).value()) {
            return ((Outcome.Sound<Map<String, Long>>) book.transactionOutcome(
                            false,
                            handle -> Outcome.sound(handle.createQuery("select relname, seq_tup_read from"
                                            + " pg_stat_user_tables where relname in (<great>)")
                                    .bindList("great", GREAT)
                                    .setMapKeyColumn("relname")
                                    .setMapValueColumn("seq_tup_read")
                                    .collectInto(new GenericType<Map<String, Long>>() {}))))
                    .value();
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
    void a_filled_book_has_the_indexes_of_a_new_one(BookTest.Kept kept) {
        try (Book fresh = ((Outcome.Sound<Book>) Book.openOrBegin(place(kept))).value();
                Book filled = ((Outcome.Sound<Book>) Book.openOrBegin(place(kept))).value()) {
            new Scale(50, 20, 400, SEED).fill(filled);
            assertThat(indexes(filled)).isNotEmpty().isEqualTo(indexes(fresh));
        }
    }

    private Place place(BookTest.Kept kept) {
        return kept == BookTest.Kept.IN_FILE
                ? new Place.InFile(folder.resolve("book" + ++books + ".db"))
                : new Place.OnServer(Server.running().database());
    }

    private static Set<String> indexes(Book book) {
        return Set.copyOf(((Outcome.Sound<List<String>>) book.transactionOutcome(
                        true, handle -> Outcome.sound(TableCopy.withoutIndexes(handle, TableCopy.tables()))))
                .value());
    }

    @ParameterizedTest
    @EnumSource
    void desks_that_write_at_once_lose_nothing(BookTest.Kept kept) {
        Place place = place(kept);
        try (Book book = ((Outcome.Sound<Book>) Book.openOrBegin(place)).value()) {
            new Scale(50, 20, 400, SEED).fill(book);
            Desks desks = Desks.writing(place, 10, 3);
            assertThat(desks.written()).as(desks.toString()).isEqualTo(30);
            assertThat(desks.there()).as(desks.toString()).isEqualTo(30);
            assertThat(Tables.remade(book, false)).isEqualTo(Outcome.sound(List.of()));
        }
    }
}
