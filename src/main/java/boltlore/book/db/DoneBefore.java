package boltlore.book.db;

import boltlore.book.Entry;
import java.util.List;

/** A piece of work was sent again that the book holds already: the line broke after it was done. Nothing was done twice. */
public final class DoneBefore extends RuntimeException {

    private final transient List<Entry> entries;

    DoneBefore(List<Entry> entries) {
        super("Entry " + entries.get(0).number() + " is of the same piece of work");
        this.entries = List.copyOf(entries);
    }

    /** What it left the first time. */
    public List<Entry> entries() {
        return entries;
    }
}
