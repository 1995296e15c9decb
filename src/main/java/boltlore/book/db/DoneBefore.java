package boltlore.book.db;

import boltlore.book.Entry;

/** What was asked has been done already, when it was sent the first time; nothing was written now. */
public final class DoneBefore extends RuntimeException {

    private final Entry first;
    private final boolean changed;

    DoneBefore(Entry first, boolean changed) {
        super("done already", null, false, false);
        this.first = first;
        this.changed = changed;
    }

    /** The first entry that it left then. */
    public long entry() {
        return first.number();
    }

    /** The same. */
    public Entry first() {
        return first;
    }

    /** Whether its form says something else now than it did then. */
    public boolean changed() {
        return changed;
    }
}
