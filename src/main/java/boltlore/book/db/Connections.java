package boltlore.book.db;

import boltlore.faults.Outcome;
import java.nio.file.Files;
import java.sql.SQLException;
import java.util.concurrent.BlockingDeque;
import java.util.concurrent.LinkedBlockingDeque;
import java.util.function.Function;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.StatementExceptions;
import org.jspecify.annotations.Nullable;

/**
 * Connections of an open book to where it is kept, and to nothing else that has come into that place: a file that was moved
 * or removed can still be written for as long as it is open, and nobody finds it afterwards; opened anew, SQLite would begin
 * another in its place and pour into it what was written ahead.
 */
final class Connections implements AutoCloseable {

    private final Place place;
    private final DataSource source;

    /** Of a file: those that wait for the next transactions, so that their pages are at hand and closing tidies up once. */
    private final BlockingDeque<Handle> waiting = new LinkedBlockingDeque<>(Dialect.MOST_CONNECTIONS);

    /** Of a file: which one was opened. */
    private @Nullable Object opened;

    /** Of a file: whether SQLite has begun to write ahead to a file of its own beside it. */
    private boolean ahead;

    Connections(Place place) {
        this.place = place;
        this.source = Dialect.connections(place);
    }

    DataSource source() {
        return source;
    }

    /** From now on the file that is there is the book. */
    synchronized void begun() {
        opened = place instanceof Place.InFile file ? file.identity() : null;
    }

    /** @throws BookLost where the file, or what SQLite writes ahead, is not the one that was opened */
    synchronized void inPlace() {
        if (place instanceof Place.InFile file && opened != null) {
            boolean isAhead = Files.exists(file.ahead());
            if (!opened.equals(file.identity()) || (ahead && !isAhead)) {
                throw new BookLost(Trouble.MOVED.at(place));
            }
            ahead = isAhead;
        }
    }

    /** A new one. What an order says of persons stands in no message of a statement that fails. */
    Handle open() {
        inPlace();
        Handle handle = Jdbi.open(source);
        handle.getConfig(StatementExceptions.class).setMessageRendering(StatementExceptions.MessageRendering.NONE);
        return handle;
    }

    /** A connection that anything went wrong with is not used again; where it was lost, those that wait are neither. */
    <T> Outcome<T> with(Function<Handle, Outcome<T>> work) {
        inPlace();
        Handle kept = waiting.pollFirst();
        Handle handle = kept == null ? open() : kept;
        boolean sound = false;
        boolean answered = false;
        try {
            Outcome<T> outcome = work.apply(handle);
            answered = true;
            sound = outcome.faults().isEmpty();
            return outcome;
        } finally {
            if (!answered) {
                closeWaiting();
            }
            if (!sound || place instanceof Place.OnServer || !waiting.offerFirst(handle)) {
                close(handle);
            }
        }
    }

    /** The last one that is closed in its place takes along what was written ahead. */
    private synchronized void close(Handle handle) {
        boolean wasInPlace = !(place instanceof Place.InFile before) || !ahead || Files.exists(before.ahead());
        handle.close();
        if (wasInPlace && place instanceof Place.InFile file && file.identity() != null) {
            ahead = Files.exists(file.ahead());
        }
    }

    private void closeWaiting() {
        for (@Nullable Handle kept = waiting.pollFirst(); kept != null; kept = waiting.pollFirst()) {
            close(kept);
        }
    }

    static boolean isCut(Handle handle) {
        try {
            return handle.getConnection().isClosed();
        } catch (SQLException none) {
            return true;
        }
    }

    @Override
    public void close() {
        closeWaiting();
        if (source instanceof AutoCloseable pool) {
            try {
                pool.close();
            } catch (Exception e) {
                throw new IllegalStateException("The pool of connections does not close", e);
            }
        }
    }
}
