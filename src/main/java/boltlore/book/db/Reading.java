package boltlore.book.db;

import org.jdbi.v3.core.Handle;

/** The book as it is at one moment, for as long as a question takes. */
public class Reading {

    private final Handle handle;

    Reading(Handle handle) {
        this.handle = handle;
    }

    public Journal journal() {
        return new Journal(handle);
    }

    public Contents contents() {
        return new Contents(handle);
    }

    public Orders orders() {
        return new Orders(handle);
    }

    public Stock stock() {
        return new Stock(handle);
    }

    public Shop shop() {
        return new Shop(handle);
    }

    public Needs needs() {
        return new Needs(handle);
    }

    public DayNeeds dayNeeds() {
        return new DayNeeds(handle);
    }

    public Packing packing() {
        return new Packing(handle);
    }

    public Changes changes() {
        return new Changes(handle);
    }

    public AsBuilt asBuilt() {
        return new AsBuilt(handle);
    }

    public Persons persons() {
        return new Persons(handle);
    }

    public DeskUsers deskUsers() {
        return new DeskUsers(handle);
    }

    /** Whether an act that may be sent twice was done; never one without a name. */
    public boolean wasDone(String act) {
        return !act.isEmpty() && new Sent(handle).entry(act).isPresent();
    }

    /** Before anything is looked at that the act itself has changed: ends with {@link DoneBefore} where it was done. */
    public void notDone(String act) {
        if (!act.isEmpty()) {
            new Sent(handle).entry(act).ifPresent(entry -> {
                throw new DoneBefore(entry);
            });
        }
    }

    Handle handle() {
        return handle;
    }
}
