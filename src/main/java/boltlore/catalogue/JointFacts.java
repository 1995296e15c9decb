package boltlore.catalogue;

import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is known of the bolted joint at a position, or of a joint that positions share.
 *
 * @param position null for a shared joint
 * @param joint name of the shared joint, or empty
 * @param safety whether it holds drive, battery, steering, brakes or people, so that each bolt is signed for
 * @param clampMm what lies between head and thread, washers included
 * @param into what the thread holds in
 * @param depthMm depth of a tapped hole's thread
 * @param thread of the tapped hole or weld nut, or null where it is a nut or rivet nut of the kit, or is not known
 * @param torque what a drawing or a maker asks for at this joint instead of the bolt's table, or null
 * @param tighteningFactor greatest over least preload of the tool, or null where it is a torque wrench
 * @param slip what shears the joint, or null
 * @param bearing what may bear under the heads, or null
 * @param securedBy what keeps its bolts from coming loose where neither thread lock nor nut does, or null
 * @param stages how its bolts are tightened one after the other, or null where it is in one go and in any order
 */
public record JointFacts(
        @Nullable PositionName position,
        String joint,
        boolean safety,
        @Nullable BigDecimal clampMm,
        @Nullable Into into,
        @Nullable BigDecimal depthMm,
        @Nullable String thread,
        @Nullable OwnTorque torque,
        @Nullable BigDecimal tighteningFactor,
        @Nullable Slip slip,
        @Nullable Bearing bearing,
        @Nullable Stages stages,
        @Nullable Wording securedBy) {

    /**
     * Rounds in which all bolts of a joint are tightened.
     *
     * @param torquesNm of the rounds by torque, rising; at least one
     * @param anglesDegrees by which all are turned on after that, round by round; empty where the last torque is the final one
     * @param order in which each round goes, in words, or null
     * @param sequence the same as numbers of bolts as the drawing numbers them, each once; empty where words say it, or nothing
     */
    public record Stages(
            List<BigDecimal> torquesNm,
            List<BigDecimal> anglesDegrees,
            @Nullable Wording order,
            List<Integer> sequence) {

        public boolean byAngle() {
            return !anglesDegrees.isEmpty();
        }

        public BigDecimal lastTorqueNm() {
            return torquesNm.get(torquesNm.size() - 1);
        }
    }

    /**
     * A torque that the clamped part sets and not the bolt: gasket, plastic, electrical terminal, soft metal.
     *
     * @param thread bolts of that thread only; empty: all of the joint
     * @param source drawing or data sheet
     */
    public record OwnTorque(String thread, BigDecimal torqueNm, String source) {}

    /**
     * A load along the clamped faces that friction holds.
     *
     * @param transverseNewton on all bolts of the position together
     * @param friction between the clamped faces
     * @param interfaces faces that carry it
     * @param leastSafety how many times the load the joint holds at least
     * @param estimate whether it is a first estimate, for the engineer's judgement
     * @param source where load and friction come from
     */
    public record Slip(
            BigDecimal transverseNewton,
            BigDecimal friction,
            int interfaces,
            BigDecimal leastSafety,
            boolean estimate,
            String source) {}

    /**
     * What a clamped part bears under heads and nuts.
     *
     * @param material of the clamped part
     * @param outerMm diameter at which the ring that presses ends, or null: that of a hexagon head
     * @param holeMm diameter of the hole under it, or null: the medium clearance hole
     * @param estimate whether it is a first estimate, for the engineer's judgement
     * @param source where the limit comes from
     */
    public record Bearing(
            String material,
            BigDecimal limitMpa,
            @Nullable BigDecimal outerMm,
            @Nullable BigDecimal holeMm,
            boolean estimate,
            String source) {}

    /** What a bolt's thread holds in. */
    public enum Into {
        NUT("nut"),
        /** Steel, and open behind its thread, so that no bolt bottoms. */
        RIVET_NUT("rivet-nut"),
        STEEL("steel"),
        CAST_IRON("cast-iron"),
        ALUMINIUM("aluminium");

        private final String written;

        Into(String written) {
            this.written = written;
        }

        public String written() {
            return written;
        }
    }
}
