package boltlore.book.db;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A book of an earlier program is brought to today's tables when it is opened, and says afterwards what its journal says. */
class OlderBookTest {

    private static final int ORDERS = 60;

    @TempDir
    private Path folder;

    static Stream<Arguments> older() {
        return Stream.of(BookTest.Kept.values())
                .flatMap(kept ->
                        Stream.of("1", "20", "30", "40", "41", "42").map(version -> Arguments.of(kept, version)));
    }

    private Place place(BookTest.Kept kept, String name) {
        return kept == BookTest.Kept.IN_FILE
                ? new Place.InFile(folder.resolve(name + ".db"))
                : new Place.OnServer(Server.running().database());
    }

    @ParameterizedTest
    @MethodSource("older")
    void is_brought_up_to_date_with_all_that_it_held(BookTest.Kept kept, String version) throws Exception {
        Place today = place(kept, "today");
        Place older = place(kept, "older");
        Map<String, String> told;
        try (Book book = ((Outcome.Sound<Book>) Book.openOrBegin(today)).value()) {
            new Scale(ORDERS, 20, 10 * ORDERS, 3).fill(book);
            told = Tables.of(book);
        }
        asOf(version, today, older);

        Outcome<Book> opened = Book.open(older);

        assertThat(opened.faults()).isEmpty();
        try (Book book = ((Outcome.Sound<Book>) opened).value()) {
            assertThat(Tables.of(book)).isEqualTo(told);
            assertThat(Tables.remade(book, false)).isEqualTo(Outcome.sound(List.of()));
        }
        try (Book again = ((Outcome.Sound<Book>) Book.open(older)).value()) {
            assertThat(Tables.of(again)).isEqualTo(told);
        }
    }

    /** The book as a program of that version would hold it: its tables, with what they can hold of today's. */
    private static void asOf(String version, Place today, Place older) throws Exception {
        var source = Dialect.connections(older);
        Flyway.configure(Schema.class.getClassLoader())
                .dataSource(source)
                .locations("classpath:boltlore/book/db")
                .table("book_schema")
                .placeholders(Dialect.of(older).types())
                .target(version)
                .load()
                .migrate();
        var from = Dialect.connections(today);
        try (Handle read = Jdbi.open(from);
                Handle write = Jdbi.open(source)) {
            for (String table : TableCopy.tables()) {
                List<String> known = TableCopy.columns(write, table);
                if (!known.isEmpty()) {
                    copy(table, known, read, write);
                }
            }
        }
        for (Object each : List.of(source, from)) {
            if (each instanceof AutoCloseable pool) {
                pool.close();
            }
        }
    }

    private static void copy(String table, List<String> columns, Handle read, Handle write) {
        String names = String.join(", ", columns);
        String marks = String.join(", ", columns.stream().map(column -> "?").toList());
        try (var batch = write.prepareBatch("insert into " + table + " (" + names + ") values (" + marks + ")")) {
            read.createQuery("select " + names + " from " + table)
                    .map((row, context) -> {
                        List<Object> values = new ArrayList<>();
                        for (String column : columns) {
                            values.add(row.getObject(column));
                        }
                        return values.toArray();
                    })
                    .forEach(batch::add);
            if (batch.size() > 0) {
                batch.execute();
            }
        }
    }
}
