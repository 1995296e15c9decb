package boltlore.book.db;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.TreeSet;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.postgresql.PGConnection;
import org.postgresql.copy.CopyIn;

/** The tables of a book in a file, row by row into a server's by PostgreSQL's COPY, in a fraction of the time of inserts. */
final class TableCopy {

    private static final List<String> TRUTH = List.of("journal", "content", "person");
    private static final int AT_ONCE = 1 << 16;

    private static final String INDEXES_OF_FILE =
            "select name, sql from sqlite_master where type = 'index' and sql is not null and tbl_name in (<tables>)";
    private static final String INDEXES_OF_SERVER = "select indexname, indexdef from pg_indexes"
            + " where schemaname = current_schema() and tablename in (<tables>)"
            + " and indexname not in (select conname from pg_constraint)";

    private TableCopy() {}

    /** Every table of a book. */
    static List<String> tables() {
        List<String> tables = new ArrayList<>(TRUTH);
        Sums.tables().forEach(table -> tables.add(table.split(" ", -1)[0]));
        return tables;
    }

    /** Names of its columns, sorted; none where there is no such table. */
    static List<String> columns(Handle handle, String table) throws SQLException {
        TreeSet<String> columns = new TreeSet<>();
        try (ResultSet found = handle.getConnection().getMetaData().getColumns(null, null, table, null)) {
            while (found.next()) {
                columns.add(found.getString("COLUMN_NAME"));
            }
        }
        return List.copyOf(columns);
    }

    /** Takes the indexes off those tables that no key needs; tells the commands by which they are made again. */
    static List<String> withoutIndexes(Handle handle, List<String> tables) {
        List<String> again = new ArrayList<>();
        handle.createQuery(isServer(handle) ? INDEXES_OF_SERVER : INDEXES_OF_FILE)
                .bindList("tables", tables)
                .map((row, context) -> List.of(row.getString(1), row.getString(2)))
                .list()
                .forEach(index -> {
                    handle.execute("drop index " + index.get(0));
                    again.add(index.get(1));
                });
        return again;
    }

    private static boolean isServer(Handle handle) {
        try {
            return handle.getConnection().isWrapperFor(PGConnection.class);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** @param to a book with all tables, which are emptied first */
    static void copy(Place.InFile from, Book to) throws SQLException {
        var source = Dialect.connections(from);
        try (Handle read = Jdbi.open(source)) {
            for (String table : tables()) {
                List<String> columns = columns(read, table);
                to.transactionOutcome(true, write -> {
                    write.execute("delete from " + table);
                    List<String> indexes = withoutIndexes(write, List.of(table));
                    copy(table, columns, read, write);
                    indexes.forEach(write::execute);
                    return boltlore.faults.Outcome.sound(true);
                });
            }
        }
        to.count();
    }

    private static void copy(String table, List<String> columns, Handle read, Handle write) {
        String names = String.join(", ", columns);
        try (var rows = read.getConnection().createStatement().executeQuery("select " + names + " from " + table)) {
            CopyIn copy = write.getConnection()
                    .unwrap(PGConnection.class)
                    .getCopyAPI()
                    .copyIn("copy " + table + " (" + names + ") from stdin");
            StringBuilder text = new StringBuilder();
            while (rows.next()) {
                for (int column = 1; column <= columns.size(); column++) {
                    text.append(column == 1 ? "" : "\t").append(written(rows.getObject(column)));
                }
                text.append('\n');
                if (text.length() > AT_ONCE) {
                    send(text, copy);
                }
            }
            send(text, copy);
            copy.endCopy();
        } catch (SQLException e) {
            throw new UncheckedIOException(new IOException(table, e));
        }
    }

    private static void send(StringBuilder text, CopyIn copy) throws SQLException {
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        copy.writeToCopy(bytes, 0, bytes.length);
        text.setLength(0);
    }

    /** In the text format of COPY (PostgreSQL's manual, page 'COPY', 'Text Format'). */
    private static String written(Object value) {
        if (value instanceof byte[] bytes) {
            return "\\\\x" + HexFormat.of().formatHex(bytes);
        }
        return value == null
                ? "\\N"
                : value.toString()
                        .replace("\\", "\\\\")
                        .replace("\t", "\\t")
                        .replace("\n", "\\n")
                        .replace("\r", "\\r");
    }
}
