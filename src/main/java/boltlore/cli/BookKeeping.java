package boltlore.cli;

import boltlore.book.Entry;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.db.Tables;
import boltlore.book.db.Transfer;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Looking after the book itself. */
@Command(
        name = "book",
        description = "Look after the book: its journal, export, import, moving, check; 'book --help' lists how.",
        subcommands = {
            BookKeeping.Info.class,
            BookKeeping.JournalOf.class,
            BookKeeping.Check.class,
            BookKeeping.Export.class,
            BookKeeping.Import.class,
            BookKeeping.Move.class,
            BookCopies.Backup.class,
            BookCopies.Restore.class
        })
final class BookKeeping extends BookGroup {

    /** Where it is and how long. */
    @Command(name = "info", description = "Say where the book is, how many entries it has and what its last one is.")
    static final class Info extends BookCommand {
        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return inBook(
                    place,
                    book -> book.read(reading -> {
                        Optional<Entry> last = reading.journal().last();
                        answer(
                                screen,
                                last,
                                entry -> JsonOut.object()
                                        .put("book", place.shown())
                                        .put("entries", entry.map(Entry::number).orElse(0L))
                                        .put("chain", entry.map(Entry::chain).orElse(Entry.NO_CHAIN)),
                                entry -> {
                                    screen.wrapped(0, place.shown());
                                    screen.wrapped(0, entry.map(Entry::number).orElse(0L) + " entries");
                                    entry.ifPresent(each -> screen.wrapped(0, "last: " + line(each, reading)));
                                });
                        return Outcome.sound(Exit.OK);
                    }));
        }
    }

    /** The entries. */
    @Command(name = "journal", description = "List entries of the journal in the order of their numbers.")
    static final class JournalOf extends BookCommand {

        private static final int MOST = 100;

        @Option(
                names = "--after",
                paramLabel = "N",
                description = "Only entries after number N; without it the last ones.")
        private long after = -1;

        @Option(names = "--most", paramLabel = "N", description = "At most so many, 100 without it.")
        private int most = MOST;

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return inBook(
                    place,
                    book -> book.read(reading -> {
                        long last = reading.journal().last().map(Entry::number).orElse(0L);
                        List<Entry> entries =
                                reading.journal().after(after < 0 ? Math.max(0, last - most) : after, most);
                        answer(
                                screen,
                                entries,
                                all -> JsonOut.list(all, entry -> new JsonOut.Plain(entry.exported())),
                                all -> all.forEach(entry ->
                                        screen.wrapped(0, line(entry, reading) + " (" + entry.subject() + ")")));
                        return Outcome.sound(Exit.OK);
                    }));
        }
    }

    /** Reads it from end to end. */
    @Command(
            name = "check",
            description = "Read the journal from its first entry, make all sums anew and compare them with those kept.")
    static final class Check extends BookCommand {

        @Option(names = "--renew", description = "Let the new sums take the place of the old ones.")
        private boolean renew;

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return inBook(
                    place,
                    book -> Tables.remade(book, renew).then(differ -> {
                        answer(
                                screen,
                                differ,
                                tables -> JsonOut.object().put("differ", JsonOut.texts(tables)),
                                tables -> screen.wrapped(
                                        0,
                                        tables.isEmpty()
                                                ? "The journal is whole, and all sums are as it says."
                                                : "Not as the journal says: " + String.join(", ", tables) + "."
                                                        + (renew
                                                                ? " They are made anew."
                                                                : " --renew makes them anew.")));
                        return Outcome.sound(differ.isEmpty() || renew ? Exit.OK : Exit.FAULTS);
                    }));
        }
    }

    /** Writes all of it into a file. */
    @Command(name = "export", description = "Write the whole book as lines of JSON, persons included, into a new file.")
    static final class Export extends BookCommand {

        @Parameters(paramLabel = "FILE", description = "The file, which must not be there yet.")
        private Path file = Path.of("");

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return inBook(place, book -> {
                try (BufferedWriter out =
                        Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW)) {
                    long entries = new Transfer(book).export(out);
                    screen.wrapped(0, entries + " entries in " + file);
                    return Outcome.sound(Exit.OK);
                } catch (FileAlreadyExistsException e) {
                    return Outcome.faulty(
                            Fault.of(file.toString(), "a file that exists", "a new file", "Name another."));
                } catch (IOException | UncheckedIOException e) {
                    return Outcome.faulty(Fault.of(
                            file.toString(),
                            "a file that cannot be written",
                            "room, and a folder that may be written",
                            "What was begun of it is no whole export: delete it."));
                }
            });
        }
    }

    /** Reads all of it from a file. */
    @Command(name = "import", description = "Read an export into a new book, or go on where this book's journal ends.")
    static final class Import extends BookCommand {

        @Parameters(paramLabel = "FILE", description = "What 'book export' wrote.")
        private Path file = Path.of("");

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            if (!Files.isReadable(file)) {
                return Outcome.faulty(Fault.of(file.toString(), "nothing to read", "an export", "Check the path."));
            }
            return inBookOrNew(
                    place,
                    book -> new Transfer(book)
                            .read(file.toString(), () -> Files.newBufferedReader(file, StandardCharsets.UTF_8))
                            .then(entries -> {
                                screen.wrapped(0, entries + " entries from " + file + " in " + place.shown());
                                return Outcome.sound(Exit.OK);
                            }));
        }
    }

    /** From a file to a server, or back. */
    @Command(
            name = "move",
            description = "Copy the whole book to another place, as from a file to a server, and compare the two.")
    static final class Move extends BookCommand {

        @Parameters(paramLabel = "FILE|URL", description = "Where to; a place without a book.")
        private String to = "";

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return Place.of(to, java.util.Map.of())
                    .then(target -> inBook(
                            place,
                            from -> inBookOrNew(
                                    target,
                                    copy -> moved(from, copy).then(entries -> {
                                        screen.wrapped(
                                                0,
                                                entries + " entries; " + place.shown() + " and " + target.shown()
                                                        + " hold the same in every table. Go on with --book "
                                                        + target.shown() + ".");
                                        return Outcome.sound(Exit.OK);
                                    }))));
        }

        private static Outcome<Long> moved(Book from, Book copy) {
            return through(from, copy)
                    .then(entries -> Tables.of(from).equals(Tables.of(copy))
                            ? Outcome.sound(entries)
                            : Outcome.faulty(Fault.of(
                                    copy.place().shown(),
                                    "another content than that of "
                                            + from.place().shown(),
                                    "the same in every table",
                                    "Somebody wrote in the meantime: close all desks, and move into a new place.")));
        }

        /** A file between the two keeps a large book out of memory. */
        private static Outcome<Long> through(Book from, Book copy) {
            @Nullable Path between = null;
            try {
                Path file = Files.createTempFile("boltlore", ".jsonl");
                between = file;
                try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
                    new Transfer(from).export(out);
                }
                return new Transfer(copy)
                        .read(from.place().shown(), () -> Files.newBufferedReader(file, StandardCharsets.UTF_8));
            } catch (IOException | UncheckedIOException e) {
                return Outcome.faulty(Fault.of(
                        String.valueOf(between), "no room for a file on the way", "room for the whole book", ""));
            } finally {
                delete(between);
            }
        }

        private static void delete(@Nullable Path file) {
            try {
                if (file != null) {
                    Files.deleteIfExists(file);
                }
            } catch (IOException e) {
                // It lies in the system's own folder for such files, readable by this user alone.
            }
        }
    }
}
