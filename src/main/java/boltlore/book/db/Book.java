package boltlore.book.db;

import boltlore.book.By;
import boltlore.book.Entry;
import boltlore.book.Stamp;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;

/**
 * An open book. Everything that is written goes through {@link #write}: one command is one transaction, repeated where
 * another desk was faster, and all of it is in the book afterwards or nothing is.
 */
public final class Book implements AutoCloseable {

    private static final int TRIES = 60;
    private static final int LONGEST_PAUSE_MS = 200;

    private final Place place;
    private final Dialect dialect;

    private final Connections connections;

    private Book(Place place) {
        this.place = place;
        this.dialect = Dialect.of(place);
        this.connections = new Connections(place);
    }

    /** The book at that place; faulty where there is none, or a newer program's. */
    public static Outcome<Book> open(Place place) {
        if (place instanceof Place.InFile file && !Files.isRegularFile(file.path())) {
            return Outcome.faulty(Fault.of(
                    place.shown(),
                    Files.exists(file.path()) ? "something that is no file" : "no book",
                    "a book",
                    "'boltlore order draft ORDER' begins one; --book names another place."));
        }
        return opened(place);
    }

    /** The book at that place, begun where there is none. */
    public static Outcome<Book> openOrBegin(Place place) {
        if (place instanceof Place.InFile file) {
            try {
                Path folder = file.path().toAbsolutePath().getParent();
                if (folder != null) {
                    Files.createDirectories(folder);
                }
            } catch (IOException e) {
                throw new BookLost(Trouble.READ_ONLY.at(place), e);
            }
        }
        return opened(place);
    }

    private static Outcome<Book> opened(Place place) {
        Book book = new Book(place);
        Outcome<Integer> ready = Outcome.faulty(Trouble.DEFECT.at(place));
        try {
            Schema schema = new Schema(place, book.connections.source());
            int before = schema.installed();
            ready = schema.ready();
            book.connections.begun();
            boolean older = before > 0 && before < Schema.NEWEST;
            // Sums that an older program did not know are made of its journal.
            return ready.then(version -> older ? Tables.remade(book, true) : Outcome.sound(List.of()))
                    .then(remade -> Outcome.sound(book));
        } finally {
            if (!ready.faults().isEmpty()) {
                book.close();
            }
        }
    }

    public Place place() {
        return place;
    }

    /** Answers a question from the book as it is at one moment. */
    public <T> T read(Function<Reading, T> question) {
        return transaction(false, handle -> Outcome.sound(question.apply(new Reading(handle))));
    }

    /**
     * Does one command's work. It may be done more than once before it stands, so it must do nothing but read and write
     * the book.
     *
     * @return faulty where the work is, and then nothing was written
     * @throws DoneBefore where the same act was done before
     */
    public <T> Outcome<Written<T>> write(By by, Function<Writing, Outcome<T>> work) {
        return transactionOutcome(true, handle -> {
            Optional<Entry> last = new Journal(handle).last();
            new Sent(handle).notDone(by);
            Writing writing = Writing.by(handle, by);
            return work.apply(writing).then(value -> {
                if (!writing.added().isEmpty()) {
                    new Sent(handle).add(by, writing.added().get(0).number());
                }
                return Outcome.sound(new Written<>(value, writing.added(), clock(last, writing.stamp())));
            });
        });
    }

    /** Lets somebody sign in at desks of this book from now on, with this password and these roles alone. */
    public void admit(DeskUsers.User user) {
        transactionOutcome(true, handle -> {
            new DeskUsers(handle).put(user);
            return Outcome.sound(user);
        });
    }

    /** Lets somebody sign in no more; false where nobody of that name could. */
    public boolean dismiss(String name) {
        return transactionOutcome(true, handle -> Outcome.sound(new DeskUsers(handle).remove(name)))
                        instanceof Outcome.Sound<Boolean> sound
                && sound.value();
    }

    /** Leaves nothing of what was erased in pages that are free by now. */
    public void sweep() {
        tend(dialect::sweep);
    }

    /** Lets the database know that very many entries have come. */
    void count() {
        tend(dialect::count);
    }

    /** What may as well be done the next time, where it cannot be done now. */
    private void tend(Consumer<Handle> work) {
        try (Handle handle = connections.open()) {
            work.accept(handle);
        } catch (RuntimeException thrown) {
            if (Trouble.of(thrown) == Trouble.DEFECT) {
                throw thrown;
            }
        }
    }

    private static String clock(Optional<Entry> last, Stamp stamp) {
        if (last.isEmpty() || !stamp.at().isBefore(last.get().stamp().at())) {
            return "";
        }
        Entry before = last.get();
        long seconds = Duration.between(stamp.at(), before.stamp().at()).toSeconds() + 1;
        return "The clock of this desk is " + lasting(seconds) + " or more behind that of desk '"
                + before.stamp().desk()
                + "', which wrote entry " + before.number()
                + ". Both are kept as they are, in the order of their numbers.";
    }

    /** '265 d 14 h' from a day on, '3 h 5 min' from an hour on, else '12 s'. */
    private static String lasting(long seconds) {
        Duration all = Duration.ofSeconds(seconds);
        if (all.toDays() > 0) {
            return all.toDays() + " d " + all.toHoursPart() + " h";
        }
        return all.toHours() > 0 ? all.toHours() + " h " + all.toMinutesPart() + " min" : seconds + " s";
    }

    private <T> T transaction(boolean toWrite, Function<Handle, Outcome<T>> work) {
        Outcome<T> outcome = transactionOutcome(toWrite, work);
        if (outcome instanceof Outcome.Sound<T> sound) {
            return sound.value();
        }
        throw new IllegalStateException("A question is never faulty");
    }

    <T> Outcome<T> transactionOutcome(boolean toWrite, Function<Handle, Outcome<T>> work) {
        for (int tried = 1; ; tried++) {
            try {
                return connections.with(handle -> once(handle, toWrite, work));
            } catch (RuntimeException thrown) {
                Trouble trouble = Trouble.of(thrown);
                if (trouble == Trouble.DEFECT) {
                    throw thrown;
                }
                if (trouble != Trouble.CONFLICT || tried == TRIES) {
                    throw new BookLost(trouble.at(place), thrown);
                }
                pause(tried);
            }
        }
    }

    private <T> Outcome<T> once(Handle handle, boolean toWrite, Function<Handle, Outcome<T>> work) {
        dialect.begin(handle, toWrite);
        boolean done = false;
        try {
            Outcome<T> outcome = work.apply(handle);
            if (outcome.faults().isEmpty()) {
                connections.inPlace();
                dialect.commit(handle);
                done = true;
            }
            return outcome;
        } finally {
            if (!done) {
                rollback(handle);
            }
        }
    }

    /** A database that has gone away has rolled back by itself; what went wrong before is what is told. */
    private void rollback(Handle handle) {
        try {
            dialect.rollback(handle);
        } catch (RuntimeException gone) {
            if (Trouble.of(gone) == Trouble.DEFECT && dialect == Dialect.POSTGRESQL && !Connections.isCut(handle)) {
                throw gone;
            }
        }
    }

    /** Desks that met once would meet again if they waited equally long. */
    private void pause(int tried) {
        int longest = Math.min(LONGEST_PAUSE_MS, 5 * tried);
        try {
            TimeUnit.MILLISECONDS.sleep(ThreadLocalRandom.current().nextInt(1, longest + 1));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new BookLost(Trouble.CONFLICT.at(place), e);
        }
    }

    @Override
    public void close() {
        connections.close();
    }
}
