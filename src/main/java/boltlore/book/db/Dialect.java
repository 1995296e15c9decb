package boltlore.book.db;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.util.Map;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteJDBCLoader;

/** In what the two databases differ. */
enum Dialect {
    SQLITE("text", "integer", "blob") {
        @Override
        void begin(Handle handle, boolean toWrite) {
            // Whoever means to write takes the only pen at once: nobody reads something and finds it changed.
            handle.execute(toWrite ? "begin immediate" : "begin");
        }

        @Override
        void commit(Handle handle) {
            handle.execute("commit");
        }

        @Override
        void rollback(Handle handle) {
            handle.execute("rollback");
        }

        @Override
        void sweep(Handle handle) {
            handle.execute("vacuum");
            handle.execute("pragma wal_checkpoint(truncate)");
        }

        @Override
        void count(Handle handle) {
            handle.execute("pragma analysis_limit = 1000");
            handle.execute("analyze");
        }
    },
    POSTGRESQL("text collate \"C\"", "bigint", "bytea") {
        @Override
        void begin(Handle handle, boolean toWrite) {
            handle.setTransactionIsolationLevel(
                    toWrite ? TransactionIsolationLevel.SERIALIZABLE : TransactionIsolationLevel.REPEATABLE_READ);
            handle.setReadOnly(!toWrite);
            handle.begin();
            if (toWrite) {
                // Before anything is read: desks that write wait for each other, so that a busy one starves nobody.
                handle.execute("lock table journal in exclusive mode");
            }
        }

        @Override
        void commit(Handle handle) {
            handle.commit();
        }

        @Override
        void rollback(Handle handle) {
            handle.rollback();
        }

        @Override
        void sweep(Handle handle) {
            handle.execute("vacuum full person");
        }

        @Override
        void count(Handle handle) {
            handle.execute("vacuum (analyze)");
        }
    };

    private static final int BUSY_MS = 20_000;
    private static final int REACH_MS = 5_000;
    /** That are kept for a desk's next transactions; more of them come and go with a file. */
    static final int MOST_CONNECTIONS = 4;

    /** For each connection, of which a desk has a few. */
    private static final int CACHE_KIB = 8 * 1024;

    private final String text;
    private final String number;
    private final String bytes;

    Dialect(String text, String number, String bytes) {
        this.text = text;
        this.number = number;
        this.bytes = bytes;
    }

    /** What stands for a type in the migrations; texts sort by their characters in both. */
    Map<String, String> types() {
        return Map.of("text", text, "number", number, "bytes", bytes);
    }

    abstract void begin(Handle handle, boolean toWrite);

    abstract void commit(Handle handle);

    abstract void rollback(Handle handle);

    /** Writes anew what holds remains of erased rows. */
    abstract void sweep(Handle handle);

    /** Counts what the tables hold, by which the database chooses its ways to an answer; asked for after very many entries. */
    abstract void count(Handle handle);

    static Dialect of(Place place) {
        return place instanceof Place.InFile ? SQLITE : POSTGRESQL;
    }

    /** Connections to it; those to a server are kept and shared, those to a file cost nothing to open. */
    static DataSource connections(Place place) {
        if (place instanceof Place.OnServer server) {
            HikariConfig config = new HikariConfig();
            config.setJdbcUrl(server.url());
            config.setMaximumPoolSize(MOST_CONNECTIONS);
            config.setMinimumIdle(1);
            config.setConnectionTimeout(REACH_MS);
            // What cannot be reached is told when something is asked of it, with its own cause.
            config.setInitializationFailTimeout(-1);
            return new HikariDataSource(config);
        }
        loaded(place);
        return file(((Place.InFile) place).path());
    }

    /** The library of the file's database is native; it comes out of the driver when it is first used. */
    private static void loaded(Place place) {
        try {
            SQLiteJDBCLoader.initialize();
        } catch (Exception | LinkageError e) {
            throw new BookLost(Trouble.NO_LIBRARY.at(place), e);
        }
    }

    private static SQLiteDataSource file(Path path) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(JournalMode.WAL);
        config.setSynchronous(SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MS);
        config.setCacheSize(-CACHE_KIB);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + path.toAbsolutePath());
        return source;
    }
}
