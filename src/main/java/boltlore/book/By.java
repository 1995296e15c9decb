package boltlore.book;

import java.time.Instant;
import java.time.LocalDate;

/**
 * Who does something, where and when, as the desk says it.
 *
 * @param at what the desk's clock says
 * @param today the calendar day at the desk
 * @param desk machine or place
 * @param name the person's name, which goes no further than the table of persons
 * @param once names the act, so that it is done once however often it is sent; empty where nothing sends it twice
 */
public record By(Instant at, LocalDate today, String desk, String name, String once) {

    /** Of an act that nothing sends twice. */
    public By(Instant at, LocalDate today, String desk, String name) {
        this(at, today, desk, name, "");
    }

    public By once(String act) {
        return new By(at, today, desk, name, act);
    }

    /** A further step of the same act, which is a transaction of its own. */
    public By further(String step) {
        return once.isEmpty() ? this : once(once + " " + step);
    }
}
