package boltlore.trades.fixings;

import boltlore.catalogue.JointFacts;
import boltlore.findings.Finding;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Stream;

/** Whether a joint's clamp load holds what shears it, and what it clamps bears the heads. */
final class ClampJudge {

    private ClampJudge() {}

    static Stream<Finding> findings(ClampedJoint joint) {
        return Stream.concat(slip(joint), bearing(joint));
    }

    private static Stream<Finding> slip(ClampedJoint joint) {
        JointFacts.Slip slip = joint.facts().slip();
        if (slip == null) {
            return Stream.empty();
        }
        BigDecimal safety = joint.slipSafety().orElse(null);
        if (safety == null) {
            return notKnown(joint);
        } else if (safety.compareTo(slip.leastSafety()) >= 0) {
            return Stream.empty();
        }
        FixingFinding kind =
                safety.compareTo(BigDecimal.ONE) < 0 ? FixingFinding.JOINT_SLIPS : FixingFinding.SLIP_MARGIN_SMALL;
        return Stream.of(found(
                joint,
                slip.estimate() ? FixingFinding.SLIP_ESTIMATE_LOW : kind,
                "safety",
                down(safety),
                "least",
                slip.leastSafety(),
                "load",
                kilonewton(slip.transverseNewton()),
                "source",
                slip.source()));
    }

    private static Stream<Finding> bearing(ClampedJoint joint) {
        JointFacts.Bearing bearing = joint.facts().bearing();
        if (bearing == null) {
            return Stream.empty();
        }
        BigDecimal pressure = joint.pressureMpa().orElse(null);
        if (pressure == null) {
            return joint.facts().slip() == null ? notKnown(joint) : Stream.empty();
        } else if (pressure.compareTo(bearing.limitMpa()) <= 0) {
            return Stream.empty();
        }
        return Stream.of(found(
                joint,
                bearing.estimate() ? FixingFinding.BEARING_ESTIMATE_HIGH : FixingFinding.BEARING_PRESSURE_HIGH,
                "pressure",
                pressure.setScale(0, RoundingMode.CEILING),
                "limit",
                bearing.limitMpa(),
                "material",
                bearing.material(),
                "source",
                bearing.source()));
    }

    private static Stream<Finding> notKnown(ClampedJoint joint) {
        return Stream.of(found(joint, FixingFinding.CLAMP_NOT_KNOWN));
    }

    /** Rounded down, so that no joint is told to hold what it does not. */
    private static BigDecimal down(BigDecimal number) {
        return number.setScale(2, RoundingMode.FLOOR);
    }

    private static BigDecimal kilonewton(BigDecimal newton) {
        return newton.movePointLeft(3).setScale(1, RoundingMode.HALF_UP);
    }

    private static Finding found(ClampedJoint joint, FixingFinding kind, Object... named) {
        Object[] all = Stream.concat(Stream.of("joint", joint.first().name()), Stream.of(named))
                .toArray();
        return Finding.of(kind, joint.first().subject(), all);
    }
}
