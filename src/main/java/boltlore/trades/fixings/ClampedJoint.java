package boltlore.trades.fixings;

import boltlore.catalogue.JointFacts;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A joint with all its bolts, and whether their clamp load holds the load across it and is borne under their heads. The
 * formulas are those of VDI 2230 (from memory: slip, R2 and R12; surface pressure, R10), with the preload that is left after
 * scatter for slip, and the full one for pressure.
 *
 * @param bolts one or more, all at one joint
 */
record ClampedJoint(JointFacts facts, List<BoltedJoint> bolts) {

    private static final MathContext DIGITS = MathContext.DECIMAL64;

    ClampedJoint {
        bolts = List.copyOf(bolts);
    }

    /** Those of which data says that they are sheared, or what bears under their heads. */
    static List<ClampedJoint> among(List<BoltedJoint> joints) {
        Map<String, List<BoltedJoint>> bySubject = new LinkedHashMap<>();
        joints.forEach(joint -> bySubject
                .computeIfAbsent(joint.subject(), subject -> new ArrayList<>())
                .add(joint));
        List<ClampedJoint> clamped = new ArrayList<>();
        for (List<BoltedJoint> bolts : bySubject.values()) {
            JointFacts facts = bolts.get(0).facts();
            if (facts != null && (facts.slip() != null || facts.bearing() != null)) {
                clamped.add(new ClampedJoint(facts, bolts));
            }
        }
        return clamped;
    }

    BoltedJoint first() {
        return bolts.get(0);
    }

    /** What all bolts clamp with at least, in N; empty where the preload of one is not known. */
    Optional<BigDecimal> leastClampNewton() {
        BigDecimal sum = BigDecimal.ZERO;
        for (BoltedJoint bolt : bolts) {
            BigDecimal least = bolt.leastPreloadNewton().orElse(null);
            if (least == null) {
                return Optional.empty();
            }
            sum = sum.add(least.multiply(bolt.quantity()));
        }
        return Optional.of(sum);
    }

    /** S = n · F · µ · q / Q: how many times the load across the joint friction holds. */
    Optional<BigDecimal> slipSafety() {
        JointFacts.Slip slip = facts.slip();
        return slip == null
                ? Optional.empty()
                : leastClampNewton()
                        .map(clamp -> clamp.multiply(slip.friction())
                                .multiply(BigDecimal.valueOf(slip.interfaces()))
                                .divide(slip.transverseNewton(), DIGITS));
    }

    /** p = F / A under the heads of the bolts that press most, in MPa. */
    Optional<BigDecimal> pressureMpa() {
        JointFacts.Bearing bearing = facts.bearing();
        if (bearing == null) {
            return Optional.empty();
        }
        BigDecimal most = null;
        for (BoltedJoint bolt : bolts) {
            BigDecimal pressure = pressureMpa(bolt, bearing).orElse(null);
            if (pressure == null) {
                return Optional.empty();
            }
            most = most == null ? pressure : most.max(pressure);
        }
        return Optional.ofNullable(most);
    }

    private static Optional<BigDecimal> pressureMpa(BoltedJoint bolt, JointFacts.Bearing bearing) {
        return bolt.preloadNewton()
                .flatMap(newton -> ScrewThread.of(bolt.fixing().thread())
                        .flatMap(HeadFace::under)
                        .map(face -> new HeadFace(
                                bearing.outerMm() == null ? face.outerMm() : bearing.outerMm(),
                                bearing.holeMm() == null ? face.holeMm() : bearing.holeMm()))
                        .map(HeadFace::areaMm2)
                        .filter(area -> area.signum() > 0)
                        .map(area -> newton.divide(area, DIGITS)));
    }
}
