package boltlore.choosing;

import java.util.List;

/** What would open a value, or make choices valid again. */
public sealed interface Opening {

    /**
     * Repairs, the preferred one first: fewest changes, then those that mean least, then the cheapest.
     *
     * @param complete false where there are further repairs beyond the ones looked at
     */
    record Repairs(List<Repair> repairs, boolean complete) implements Opening {}

    /** Nothing has to be changed. */
    record AlreadyOpen() implements Opening {}

    /** Only firm choices stand in its way, and no repair may touch them; or no order has it at all. */
    record Impossible(Conflict conflict) implements Opening {}

    /** Limits would allow it, but each kit has a finding that stops its sheets. */
    record Stopped() implements Opening {}
}
