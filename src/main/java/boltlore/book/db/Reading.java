package boltlore.book.db;

import boltlore.book.By;
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

    /** Whether an act that may be sent twice was done, or another with its form; never one without a name. */
    public boolean wasDone(By by) {
        Sent sent = new Sent(handle);
        return sent.entry(by.once()).isPresent() || sent.entry(by.form()).isPresent();
    }

    /** Before anything is looked at that the act itself has changed: ends with {@link DoneBefore} where it was done. */
    public void notDone(By by) {
        new Sent(handle).notDone(by);
    }

    Handle handle() {
        return handle;
    }
}
