package boltlore.book.db;

import boltlore.faults.Fault;
import org.jspecify.annotations.Nullable;

/**
 * The book could not be read or written, through no fault of what was asked: the disk is full, the server gone. Nothing of
 * the command was written. One place tells it, with the fault's sentence.
 */
public final class BookLost extends RuntimeException {

    private final transient Fault fault;

    BookLost(Fault fault, @Nullable Throwable cause) {
        super(fault.found(), cause);
        this.fault = fault;
    }

    BookLost(Fault fault) {
        this(fault, null);
    }

    public Fault fault() {
        return fault;
    }
}
