package boltlore.trades.fixings;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.catalogue.JointFacts.Into;
import boltlore.catalogue.ThreadName;
import boltlore.findings.Finding;
import boltlore.measure.Digits;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Looks at one joint: its property class, its torque, and whether its bolt is long enough and not too long. */
final class JointJudge {

    private static final int KILO = 3;

    private static final Wording UNKNOWN = wording("unknown", "unbekannt", "inconnue");

    private static final Map<Into, Wording> MATERIALS = Map.of(
            Into.RIVET_NUT, wording("a rivet nut", "einer Blindnietmutter", "un écrou à sertir"),
            Into.STEEL, wording("steel", "Stahl", "l'acier"),
            Into.CAST_IRON, wording("cast iron", "Gusseisen", "la fonte"),
            Into.ALUMINIUM, wording("aluminium", "Aluminium", "l'aluminium"));

    private final BoltedJoint joint;
    private final List<Finding> findings = new ArrayList<>();

    private JointJudge(BoltedJoint joint) {
        this.joint = joint;
    }

    private static Wording wording(String english, String german, String french) {
        return new Wording(Map.of("en", english, "de", german, "fr", french));
    }

    static Stream<Finding> findings(BoltedJoint joint) {
        JointJudge judge = new JointJudge(joint);
        judge.propertyClass();
        judge.nuts();
        judge.thread(joint.facts());
        judge.known();
        judge.torque();
        judge.stretch();
        judge.sequence();
        judge.length(joint.facts());
        judge.washers();
        judge.secured();
        return judge.findings.stream();
    }

    /** Never stainless A2 in its place without a new calculation. */
    private void propertyClass() {
        String written = joint.fixing().propertyClass();
        if (joint.safety()
                && !PropertyClass.of(written).filter(PropertyClass::holdsSafety).isPresent()) {
            found(FixingFinding.BOLT_CLASS_TOO_LOW, "class", written == null ? UNKNOWN : written);
        }
    }

    /** A nut's class is at least the first number of its bolt's (ISO 898-2, SAE J995, from memory). */
    private void nuts() {
        PropertyClass bolt = PropertyClass.of(joint.fixing().propertyClass()).orElse(null);
        for (BoltedJoint.Accompanying each : joint.with()) {
            Fixing nut = each.part().fixing();
            String written = nut == null || nut.propertyClass() == null ? "" : nut.propertyClass();
            if (bolt != null
                    && bolt.nutClass(written).filter(of -> of < bolt.nut()).isPresent()) {
                found(FixingFinding.NUT_CLASS_TOO_LOW, "nut", written, "bolt", bolt.written(), "least", bolt.nut());
            }
        }
    }

    /** What the bolts hold in has their thread: the tapped hole, or as many nuts as there are bolts. */
    private void thread(@Nullable JointFacts facts) {
        String bolt = joint.fixing().thread();
        if (facts == null || facts.into() == null) {
            return;
        }
        if (facts.into() == Into.NUT || facts.into() == Into.RIVET_NUT) {
            BigDecimal nuts = joint.with().stream()
                    .filter(each -> each.part().fixing() != null
                            && each.part().fixing().isNut()
                            && each.part().fixing().thread().equals(bolt))
                    .map(BoltedJoint.Accompanying::quantity)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            if (nuts.compareTo(joint.quantity()) < 0) {
                found(FixingFinding.NUTS_TOO_FEW, "bolts", joint.quantity(), "thread", bolt, "nuts", nuts);
            }
        } else if (facts.thread() != null && !facts.thread().equals(bolt)) {
            found(FixingFinding.BOLT_OF_OTHER_THREAD, "bolt", bolt, "hole", facts.thread());
        }
    }

    /**
     * Each bolt has a washer of its own size under its head, unless it needs none. Common practice, no source: it spares the
     * coat and evens the friction that the torque stands for.
     */
    private void washers() {
        if (joint.fixing().washer() != null) {
            return;
        }
        BigDecimal washers = BigDecimal.ZERO;
        for (BoltedJoint.Accompanying each : joint.with()) {
            Fixing washer = each.part().fixing();
            if (washer != null && washer.isWasher()) {
                washers = washers.add(each.quantity());
                if (!ThreadName.mate(joint.fixing().thread(), washer.thread())) {
                    found(
                            FixingFinding.WASHER_OF_OTHER_SIZE,
                            "bolt",
                            joint.fixing().thread(),
                            "washer",
                            washer.thread());
                }
            }
        }
        if (washers.compareTo(joint.quantity()) < 0) {
            found(
                    joint.safety() ? FixingFinding.SAFETY_WASHERS_TOO_FEW : FixingFinding.WASHERS_TOO_FEW,
                    "bolts",
                    joint.quantity(),
                    "thread",
                    joint.fixing().thread(),
                    "washers",
                    washers);
        }
    }

    /** One means keeps a joint that is signed for from coming loose, and not two that spoil each other. */
    private void secured() {
        boolean lock = joint.fixing().threadLock() != null;
        boolean locking = joint.prevailingNm() != null;
        if (lock && locking) {
            found(
                    FixingFinding.SECURED_TWICE,
                    "lock",
                    Objects.requireNonNull(joint.fixing().threadLock()));
        } else if (joint.safety() && !joint.isSecured()) {
            found(FixingFinding.NOT_SECURED);
        }
    }

    private void torque() {
        Fixing fixing = joint.fixing();
        if (joint.byAngle()) {
            JointFacts.Stages stages = joint.stages().orElseThrow();
            found(
                    FixingFinding.ANGLE_FOR_JUDGEMENT,
                    "torque",
                    stages.lastTorqueNm(),
                    "angle",
                    stages.anglesDegrees().stream().reduce(BigDecimal.ZERO, BigDecimal::add));
        } else if (joint.torqueNm() == null) {
            found(joint.safety() ? FixingFinding.SAFETY_BOLT_WITHOUT_TORQUE : FixingFinding.BOLT_WITHOUT_TORQUE);
        } else if (joint.ownTorque().isEmpty() && (fixing.torqueTable() == null || fixing.friction() == null)) {
            found(FixingFinding.TORQUE_WITHOUT_TABLE);
        }
    }

    /** A thread or class that nobody knows here is told, or its torque and length would pass unseen. */
    private void known() {
        Fixing fixing = joint.fixing();
        boolean thread =
                ScrewThread.of(fixing.thread()).flatMap(HeadFace::under).isPresent();
        boolean judged = fixing.propertyClass() != null || joint.torqueNm() != null;
        if (!thread || (judged && PropertyClass.of(fixing.propertyClass()).isEmpty())) {
            found(
                    FixingFinding.BOLT_NOT_KNOWN,
                    "thread",
                    fixing.thread(),
                    "class",
                    fixing.propertyClass() == null ? UNKNOWN : fixing.propertyClass());
        }
    }

    /** Too little clamps too little, unless the joint's own drawing asks for it; too much takes the bolt to its yield. */
    private void stretch() {
        BigDecimal torqueNm = joint.torqueNm();
        Tightening tightening = Tightening.of(joint.fixing()).orElse(null);
        if (torqueNm == null || tightening == null) {
            return;
        }
        boolean own = joint.ownTorque().isPresent();
        switch (tightening.fit(torqueNm).orElse(Tightening.Fit.FITS)) {
            case FAR_BELOW -> found(!own, FixingFinding.TORQUE_FAR_TOO_LOW, tightening, torqueNm);
            case BELOW -> found(!own, FixingFinding.TORQUE_TOO_LOW, tightening, torqueNm);
            case FITS -> {}
            case ABOVE -> found(true, FixingFinding.TORQUE_TOO_HIGH, tightening, torqueNm);
            case FAR_ABOVE -> found(true, FixingFinding.TORQUE_FAR_TOO_HIGH, tightening, torqueNm);
        }
    }

    /** A sequence of another number than there are bolts belongs to another drawing. */
    private void sequence() {
        int numbered = joint.stages().map(stages -> stages.sequence().size()).orElse(0);
        if (numbered > 0 && joint.quantity().compareTo(BigDecimal.valueOf(numbered)) != 0) {
            found(FixingFinding.SEQUENCE_OF_OTHER_COUNT, "numbered", numbered, "bolts", joint.quantity());
        }
    }

    private void found(boolean counts, FixingFinding kind, Tightening tightening, BigDecimal torqueNm) {
        if (counts) {
            found(
                    kind,
                    "torque",
                    mm(torqueNm),
                    "computed",
                    rounded(tightening.torqueNm(), 0),
                    "percent",
                    rounded(tightening.percentOfYield(torqueNm), 0).setScale(0, RoundingMode.HALF_UP),
                    "preload",
                    rounded(joint.preloadNewton(), KILO),
                    "proof",
                    kilonewton(tightening.propertyClass().proofLoadNewton(tightening.thread())));
        }
    }

    /** There, since the computed torque is: thread, class and friction are known. */
    private static BigDecimal rounded(Optional<BigDecimal> figure, int left) {
        return figure.orElse(BigDecimal.ZERO).movePointLeft(left).setScale(1, RoundingMode.HALF_UP);
    }

    private static BigDecimal kilonewton(BigDecimal newton) {
        return newton.movePointLeft(KILO).setScale(1, RoundingMode.HALF_UP);
    }

    private void length(@Nullable JointFacts facts) {
        Engagement.of(joint.fixing(), facts).ifPresent(engagement -> {
            if (engagement.isShort() && engagement.into() == Into.NUT) {
                found(
                        FixingFinding.BOLT_TOO_SHORT_FOR_NUT,
                        "left",
                        mm(engagement.heldMm()),
                        "least",
                        mm(engagement.leastMm()));
            } else if (engagement.isShort()) {
                found(
                        FixingFinding.THREAD_TOO_SHORT,
                        "holds",
                        mm(engagement.heldMm()),
                        "material",
                        MATERIALS.getOrDefault(engagement.into(), UNKNOWN),
                        "least",
                        mm(engagement.leastMm()));
            }
            if (engagement.isLong()) {
                found(
                        FixingFinding.BOLT_TOO_LONG_FOR_NUT,
                        "left",
                        mm(engagement.heldMm()),
                        "most",
                        mm(engagement.mostMm()));
            }
            BigDecimal depth = engagement.depthMm();
            if (depth != null && engagement.bottoms()) {
                found(FixingFinding.BOLT_BOTTOMS, "reaches", mm(engagement.heldMm()), "depth", mm(depth));
            }
        });
    }

    private static BigDecimal mm(BigDecimal number) {
        return new BigDecimal(Digits.plain(number));
    }

    private void found(FixingFinding kind, Object... named) {
        List<Object> all = new ArrayList<>(List.of("joint", joint.name()));
        all.addAll(List.of(named));
        findings.add(Finding.of(kind, joint.subject(), all.toArray()));
    }
}
