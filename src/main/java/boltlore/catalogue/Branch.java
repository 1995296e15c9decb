package boltlore.catalogue;

import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A cable of the vehicle's power wiring with what feeds it, what it feeds, and what protects it.
 *
 * @param position that holds the cable; where it is empty the branch is not there
 * @param fedBy what drives current into it when it is shorted
 * @param loadAmps the largest current in A that flows for hours, as declared, or null
 * @param feeds what its current is worked out from, or null
 * @param derating the share of its current that the cable carries where it lies, from above 0 to 1
 * @param because why the cable is derated, or empty
 */
public record Branch(
        String name,
        String says,
        Condition when,
        PositionName position,
        FedBy fedBy,
        @Nullable BigDecimal loadAmps,
        @Nullable Feeds feeds,
        Protection protection,
        PartNumber cable,
        BigDecimal derating,
        String because) {

    /** What a branch hangs on. */
    public sealed interface FedBy {

        /** Its voltage is that of the pack. */
        record Pack() implements FedBy {}

        /** The network of the 12 V battery. */
        record LowVoltage() implements FedBy {}

        /**
         * Mains from outside the vehicle, which the charging point protects.
         *
         * @param volts the highest, between the conductors of the cable, in V
         * @param phases 1 or 3
         */
        record Mains(BigDecimal volts, int phases) implements FedBy {}

        /**
         * The on-board charger, feeding out.
         *
         * @param volts the highest in V
         */
        record Charger(BigDecimal volts) implements FedBy {}
    }

    /** What protects the cable from what feeds it. */
    public record Protection(@Nullable Fuse fuse, @Nullable FarEnd farEnd, String limitedBy) {

        /**
         * The fuse at the end that feeds the branch.
         *
         * @param name of the fuse
         * @param afterMm length in mm of conductor between what feeds it and the fuse; null where nobody says
         */
        public record Fuse(String name, @Nullable Integer afterMm) {}

        /**
         * What protects a branch that is fed from its other end too.
         *
         * @param fuse name of the fuse there, or null
         * @param limitedBy what limits the current from there, or empty
         */
        public record FarEnd(@Nullable String fuse, String limitedBy) {}
    }
}
