package boltlore.cli;

import boltlore.book.db.Backups;
import boltlore.book.db.Place;
import boltlore.faults.Outcome;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Backups of the book, by the database's own means. */
final class BookCopies {

    private BookCopies() {}

    /** Makes one. */
    @Command(
            name = "backup",
            description = "Write a backup into a new file while the book is in use: a book of its own from a file, what"
                    + " pg_dump makes from a server.")
    static final class Backup extends BookCommand {

        @Parameters(paramLabel = "FILE", description = "The file, which must not be there yet.")
        private Path file = Path.of("");

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return inBook(
                    place,
                    book -> Backups.write(book, file).then(path -> {
                        screen.wrapped(0, "Written and read again: " + path);
                        return Outcome.sound(Exit.OK);
                    }));
        }
    }

    /** Puts one back. */
    @Command(
            name = "restore",
            description =
                    "Put a backup back into a place that holds no book; the book that is there is never replaced.")
    static final class Restore extends BookCommand {

        @Parameters(paramLabel = "FILE", description = "What 'book backup' wrote.")
        private Path file = Path.of("");

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return Backups.restore(file, place).then(entries -> {
                screen.wrapped(0, entries + " entries from " + file + " in " + place.shown());
                return Outcome.sound(Exit.OK);
            });
        }
    }
}
