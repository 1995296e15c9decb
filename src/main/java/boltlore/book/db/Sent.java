package boltlore.book.db;

import boltlore.book.By;
import boltlore.book.Entry;
import java.util.Optional;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** Which acts that may be sent twice were done, and which forms have done theirs. */
final class Sent {

    /** Nobody sends a form again that is older than so many entries. */
    private static final long KEPT_ENTRIES = 100_000;

    private final Handle handle;

    Sent(Handle handle) {
        this.handle = handle;
    }

    /** Ends with {@link DoneBefore} where the act was done, or where its form has done another. */
    void notDone(By by) {
        entry(by.once()).ifPresent(entry -> {
            throw new DoneBefore(first(entry), false);
        });
        entry(by.form()).ifPresent(entry -> {
            throw new DoneBefore(first(entry), true);
        });
    }

    /** The first entry that it left; empty where it was not done. */
    Optional<Long> entry(String act) {
        return act.isEmpty()
                ? Optional.empty()
                : handle.createQuery("select entry from form_sent where sent = ?")
                        .bind(0, act)
                        .mapTo(Long.class)
                        .findOne();
    }

    private Entry first(long entry) {
        return new Journal(handle).entry(entry).orElseThrow();
    }

    void add(By by, long entry) {
        Stream.of(by.once(), by.form())
                .filter(name -> !name.isEmpty())
                .forEach(name -> handle.execute("insert into form_sent (sent, entry) values (?, ?)", name, entry));
        handle.execute("delete from form_sent where entry < ?", entry - KEPT_ENTRIES);
    }
}
