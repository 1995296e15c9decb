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
 * @param form names the form that the act was sent with: one form does one act; empty where it may do several
 */
public record By(Instant at, LocalDate today, String desk, String name, String once, String form) {

    /** Of an act that nothing sends twice. */
    public By(Instant at, LocalDate today, String desk, String name) {
        this(at, today, desk, name, "", "");
    }

    /**
     * Of an act that may be sent twice.
     *
     * @param act the same whenever the same is said
     * @param with the form that says it, whatever it says; empty where a form may say several things in turn
     * @return the same person at the same desk
     */
    public By once(String act, String with) {
        return new By(at, today, desk, name, act, with);
    }

    /** A further step of the same act, which is a transaction of its own. */
    public By further(String step) {
        return once.isEmpty() ? this : once(once + " " + step, form.isEmpty() ? "" : form + " " + step);
    }
}
