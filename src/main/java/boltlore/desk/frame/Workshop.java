package boltlore.desk.frame;

import boltlore.book.db.Book;
import boltlore.book.orders.Bench;

/**
 * What all rooms work with.
 *
 * @param bench the catalogue, ready to resolve orders; several may use it at once
 * @param book the open book
 */
public record Workshop(Bench bench, Book book) {

    /** What people call what the book keeps under codes. */
    public Names names() {
        return new Names(bench.catalogue());
    }
}
