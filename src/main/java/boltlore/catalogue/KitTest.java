package boltlore.catalogue;

import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A test of finished kits.
 *
 * @param when in which kits it is made
 * @param at positions at which it is made, one by one, where something stands there; empty: once for the kit
 * @param earthPoints whether it is made at every part with an earth point too
 * @param instrument name of an instrument of the same file
 * @param bound of the workshop that its limit keeps, or null where nobody says which
 */
public record KitTest(
        String name,
        Wording says,
        Condition when,
        List<PositionName> at,
        boolean earthPoints,
        Wording method,
        String instrument,
        Demand demand,
        @Nullable String bound) {

    /** Whether it is made once for the whole kit, and not at each of some places. */
    public boolean once() {
        return at.isEmpty() && !earthPoints;
    }
}
