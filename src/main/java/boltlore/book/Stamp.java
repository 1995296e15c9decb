package boltlore.book;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * When and by whom something was done.
 *
 * @param at as the desk's own clock said, to the millisecond; clocks may be wrong, so entries are in the order of their
 *     numbers
 * @param desk the machine or place
 * @param person key of the person; the name stands in the table of persons alone
 */
public record Stamp(Instant at, String desk, String person) {

    public Stamp {
        at = at.truncatedTo(ChronoUnit.MILLIS);
    }
}
