package boltlore.book.db;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** The book's tables, brought to what this program needs; a book that a newer program has brought further is refused. */
final class Schema {

    /** Version of the newest migration. */
    static final int NEWEST = 43;

    private static final String HISTORY = "book_schema";

    private final Place place;
    private final DataSource source;

    Schema(Place place, DataSource source) {
        this.place = place;
        this.source = source;
    }

    /** Leaves the book with all tables of this program, or faults. */
    Outcome<Integer> ready() {
        int there = installed();
        if (there == NEWEST) {
            return Outcome.sound(NEWEST);
        }
        if (there > NEWEST) {
            return Outcome.faulty(Fault.of(
                    place.shown(),
                    "a book of a newer Boltlore (its tables have version " + there + ")",
                    "tables up to version " + NEWEST + ", which this Boltlore knows",
                    "Use the newer one here too; nothing was changed."));
        }
        return place instanceof Place.InFile file ? migratedAlone(file.path()) : migrated();
    }

    /** Version of the tables; 0 where there are none. */
    int installed() {
        try (Handle handle = Jdbi.open(source)) {
            return handle.createQuery("select version from " + HISTORY
                            + " where success and version is not null order by installed_rank desc limit 1")
                    .mapTo(Integer.class)
                    .findOne()
                    .orElse(0);
        } catch (JdbiException none) {
            if (Trouble.of(none) == Trouble.DEFECT) {
                return 0;
            }
            throw new BookLost(Trouble.of(none).at(place), none);
        }
    }

    /** A server lets one desk at a time change tables, a file does not: the lock of a file beside it does. */
    private Outcome<Integer> migratedAlone(Path file) {
        Path lock = file.resolveSibling("." + file.getFileName() + ".changing");
        try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock held = channel.lock()) {
            Outcome<Integer> done = held.isValid() && installed() < NEWEST ? migrated() : Outcome.sound(NEWEST);
            Files.deleteIfExists(lock);
            return done;
        } catch (IOException e) {
            throw new BookLost(Trouble.READ_ONLY.at(place), e);
        }
    }

    private Outcome<Integer> migrated() {
        try {
            Flyway.configure(Schema.class.getClassLoader())
                    .dataSource(source)
                    .locations("classpath:boltlore/book/db")
                    .table(HISTORY)
                    .placeholders(Dialect.of(place).types())
                    .baselineOnMigrate(false)
                    .cleanDisabled(true)
                    .load()
                    .migrate();
            return Outcome.sound(NEWEST);
        } catch (RuntimeException e) {
            Trouble trouble = Trouble.of(e);
            if (trouble == Trouble.DEFECT) {
                throw e;
            }
            throw new BookLost(trouble.at(place), e);
        }
    }
}
