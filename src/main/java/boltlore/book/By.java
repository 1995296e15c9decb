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
 * @param once what names this one piece of work where it may be sent twice over a line that breaks; empty where it cannot
 */
public record By(Instant at, LocalDate today, String desk, String name, String once) {

    public By(Instant at, LocalDate today, String desk, String name) {
        this(at, today, desk, name, "");
    }

    /** The same, for work that is done once however often it is sent. */
    public By once(String key) {
        return new By(at, today, desk, name, key);
    }
}
