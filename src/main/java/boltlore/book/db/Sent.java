package boltlore.book.db;

import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Which acts that may be sent twice were done. */
final class Sent {

    /** Nobody sends a form again that is older than so many entries. */
    private static final long KEPT_ENTRIES = 100_000;

    private final Handle handle;

    Sent(Handle handle) {
        this.handle = handle;
    }

    /** The first entry that it left; empty where it was not done. */
    Optional<Long> entry(String act) {
        return handle.createQuery("select entry from form_sent where sent = ?")
                .bind(0, act)
                .mapTo(Long.class)
                .findOne();
    }

    void add(String act, long entry) {
        handle.execute("insert into form_sent (sent, entry) values (?, ?)", act, entry);
        handle.execute("delete from form_sent where entry < ?", entry - KEPT_ENTRIES);
    }
}
