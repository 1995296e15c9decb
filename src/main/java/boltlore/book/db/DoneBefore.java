package boltlore.book.db;

/** What was asked has been done already, when it was sent the first time; nothing was written now. */
public final class DoneBefore extends RuntimeException {

    DoneBefore() {
        super("done already", null, false, false);
    }
}
