package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the current of a branch is worked out from. */
public sealed interface Feeds {

    /**
     * A device: its current is power / (efficiency × voltage), largest at the lowest voltage.
     *
     * @param watts the largest power in W that it gives, if only for a short time
     * @param continuousWatts what it gives for hours in W, at most the largest
     * @param efficiencyPercent share of what it draws that it gives, above 0
     * @param atVolts the voltage in V that its feed keeps, or null for the lowest of what feeds the branch
     */
    record Device(
            BigDecimal watts,
            BigDecimal continuousWatts,
            BigDecimal efficiencyPercent,
            @Nullable BigDecimal atVolts) implements Feeds {}

    /**
     * Other branches of the kit, added up.
     *
     * @param share of the sum that flows here, from above 0 to 1
     */
    record Branches(List<String> names, BigDecimal share) implements Feeds {
        public Branches {
            names = List.copyOf(names);
        }
    }

    /** What the order's own choices say. */
    enum Chosen implements Feeds {
        /** Direct current of the on-board charger into the empty pack. */
        CHARGER_OUTPUT("charger-output"),
        /** Alternating current of the on-board charger. */
        CHARGER_INPUT("charger-input"),
        /** The lesser of what inlet and pack take on direct current. */
        DIRECT_CHARGING("direct-charging"),
        /** What the V2L outlet is rated. */
        OUTLET("outlet");

        private final String written;

        Chosen(String written) {
            this.written = written;
        }

        public String written() {
            return written;
        }
    }
}
