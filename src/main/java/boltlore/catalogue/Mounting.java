package boltlore.catalogue;

import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a family says about the mounts of its heavy parts, and the shocks that they must bear. */
public record Mounting(List<Shock> shocks, List<Mount> mounts) {

    /** Of a family that says nothing about mounts. */
    public static final Mounting NONE = new Mounting(List.of(), List.of());

    /**
     * A load in multiples of the weight, all three at once.
     *
     * @param ahead along the vehicle, either way
     * @param across either way
     * @param down with the weight itself in it
     * @param torque whether the drive gives its greatest torque meanwhile
     */
    public record Shock(
            String name, String says, BigDecimal ahead, BigDecimal across, BigDecimal down, boolean torque) {}

    /**
     * Bolts that bear a mount's load together.
     *
     * @param at positions whose bolts they are, of all mounts that are alike together; empty where nobody says
     * @param stressAreaMm2 of one thread
     * @param ultimateMpa tensile strength of the bolt
     */
    public record Bolts(List<PositionName> at, int count, BigDecimal stressAreaMm2, BigDecimal ultimateMpa) {}

    /**
     * Fillet welds that bear a mount's load together.
     *
     * @param lengthMm that bears, without the ends
     * @param ultimateMpa tensile strength of the weaker of the parts joined
     * @param correlation factor of that steel: 0.8 for S235, 0.9 for S355
     */
    public record Welds(BigDecimal throatMm, BigDecimal lengthMm, BigDecimal ultimateMpa, BigDecimal correlation) {}

    /**
     * One mount, or several alike that share a load.
     *
     * @param carries positions whose mass hangs on it, with all that is fastened to what stands there
     * @param share of that mass on the weakest of its kind, as a fraction
     * @param alike how many of its kind carry their share each: 2 for a left and a right one
     * @param leverMm distance between the mounts that hold the drive unit against its output's torque; null where the mount
     *     holds no drive unit
     * @param bolts null where it is not bolted
     * @param welds null where it is not welded
     */
    public record Mount(
            String name,
            String says,
            Condition when,
            List<PositionName> carries,
            BigDecimal share,
            int alike,
            @Nullable BigDecimal leverMm,
            @Nullable Bolts bolts,
            @Nullable Welds welds,
            String source) {}
}
