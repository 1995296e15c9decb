package boltlore.book.db;

/** What was asked has been done already, when it was sent the first time; nothing was written now. */
public final class DoneBefore extends RuntimeException {

    private final long entry;

    DoneBefore(long entry) {
        super("done already", null, false, false);
        this.entry = entry;
    }

    /** The first entry that it left then. */
    public long entry() {
        return entry;
    }
}
