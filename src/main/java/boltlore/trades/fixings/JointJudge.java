package boltlore.trades.fixings;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.catalogue.JointFacts.Into;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Looks at one joint: its property class, its torque, and whether its bolt is long enough and not too long. The multiples
 * for engagement and the threads that stand proud are common practice, no source.
 */
final class JointJudge {

    /** Threads that stand proud of a nut. */
    private static final BigDecimal PROUD = BigDecimal.valueOf(2);

    private static final int KILO = 3;

    private final BoltedJoint joint;
    private final List<Remarked> remarks = new ArrayList<>();

    private JointJudge(BoltedJoint joint) {
        this.joint = joint;
    }

    static Stream<Remarked> remarks(BoltedJoint joint) {
        JointJudge judge = new JointJudge(joint);
        judge.propertyClass();
        judge.nuts();
        judge.torque();
        judge.stretch();
        judge.length(joint.facts());
        return judge.remarks.stream();
    }

    /** Never stainless A2 in its place without a new calculation. */
    private void propertyClass() {
        String written = joint.fixing().propertyClass();
        if (joint.safety() && PropertyClass.of(written).isEmpty()) {
            wrong("Bolts of class " + (written == null ? "unknown" : written)
                    + ". A joint that holds drive, battery, steering or brakes takes 8.8 at least, and stainless A2 never in"
                    + " its place without a new calculation.");
        }
    }

    /** A nut's class is at least the first number of its bolt's (ISO 898-2, from memory). */
    private void nuts() {
        PropertyClass bolt = PropertyClass.of(joint.fixing().propertyClass()).orElse(null);
        for (Accompanying each : joint.with()) {
            Fixing nut = each.part().fixing();
            String written = nut == null || nut.propertyClass() == null ? "" : nut.propertyClass();
            if (bolt != null && written.matches("\\d{1,2}") && Integer.parseInt(written) < bolt.nut()) {
                wrong("Nuts of class " + written + " on bolts of class "
                        + joint.fixing().propertyClass() + ". They take class " + bolt.nut() + " at least.");
            }
        }
    }

    private void torque() {
        Fixing fixing = joint.fixing();
        if (fixing.torqueNm() == null) {
            look("Bolts without a torque. Take one from a table and write table, edition and friction beside it.");
        } else if (fixing.torqueTable() == null || fixing.friction() == null) {
            wrong("A torque without its table or friction. Public tables for one bolt range from 22 to 28 Nm.");
        }
    }

    /** A preload above the proof load leaves the bolt longer than it was. */
    private void stretch() {
        Tightening.of(joint.fixing())
                .map(tightening -> tightening.propertyClass().proofLoadNewton(tightening.thread()))
                .ifPresent(proof -> joint.preloadNewton()
                        .filter(preload -> preload.compareTo(proof) > 0)
                        .ifPresent(preload -> wrong("The torque gives " + kilonewton(preload)
                                + " of preload, above the bolt's proof load of " + kilonewton(proof) + ".")));
    }

    private static String kilonewton(BigDecimal newton) {
        return newton.movePointLeft(KILO).setScale(1, RoundingMode.HALF_UP).toPlainString() + " kN";
    }

    private void length(@Nullable JointFacts facts) {
        BigDecimal length = joint.fixing().lengthMm();
        Optional<MetricThread> thread = MetricThread.of(joint.fixing().thread());
        if (facts != null && facts.clampMm() != null && length != null && thread.isPresent()) {
            BigDecimal held = length.subtract(facts.clampMm());
            Into into = facts.into() == null ? Into.NUT : facts.into();
            if (into == Into.NUT) {
                nut(held, thread.get());
            } else {
                tapped(held, into, thread.get().diameterMm(), facts.depthMm());
            }
        }
    }

    /** A self-locking nut is about as high as its thread is wide (from memory). */
    private void nut(BigDecimal held, MetricThread thread) {
        BigDecimal least = thread.diameterMm().add(PROUD.multiply(thread.pitchMm()));
        if (held.compareTo(least) < 0) {
            wrong("Of the bolt " + mm(held) + " are left for the nut. Nut and two threads proud take " + mm(least)
                    + ".");
        }
    }

    private void tapped(BigDecimal held, Into into, BigDecimal diameter, @Nullable BigDecimal depth) {
        BigDecimal least = Engagement.least(into).multiply(diameter);
        if (held.compareTo(least) < 0) {
            wrong("Only " + mm(held) + " of thread hold in " + into.written() + ". At least " + mm(least)
                    + " are needed.");
        }
        if (depth != null && held.compareTo(depth) > 0) {
            wrong("The bolt reaches " + mm(held) + " into a thread of " + mm(depth) + ": it bottoms before it clamps.");
        }
    }

    private static String mm(BigDecimal number) {
        return Digits.plain(number) + " mm";
    }

    private void look(String says) {
        remarks.add(new Remarked(joint.says(), Verdict.LOOK, joint.says() + ": " + says));
    }

    private void wrong(String says) {
        remarks.add(new Remarked(joint.says(), Verdict.WRONG, joint.says() + ": " + says));
    }
}
