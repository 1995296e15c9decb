package boltlore.trades.fixings;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.measure.Digits;
import boltlore.measure.Wording;
import boltlore.report.Phrases;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Bolts and their torques for people who fit them, in one language. */
record BoltWords(Phrases phrases, String language) {

    /** 'M8 × 25, 8.8'; a set by its name, 'Earth bolt set M8 (FX-E8)'. */
    String size(BoltedJoint joint) {
        if (joint.calledByName()) {
            return joint.bolt().name().in(language) + " (" + joint.bolt().number() + ")";
        }
        Fixing fixing = joint.fixing();
        BigDecimal length = fixing.lengthMm();
        String propertyClass = fixing.propertyClass();
        return fixing.thread()
                + (length == null ? "" : " × " + Digits.plain(length))
                + (propertyClass == null ? "" : ", " + propertyClass);
    }

    /** '4 × M8 × 25, 8.8; 4 × Flat washer M8': what the names leave open, the bag's own list of part numbers says. */
    String bolts(BoltedJoint joint) {
        String with = joint.with().stream()
                .map(each -> phrases.say("next") + Digits.plain(each.quantity()) + " × "
                        + each.part().name().in(language))
                .collect(Collectors.joining());
        return Digits.plain(joint.quantity()) + " × " + size(joint) + with;
    }

    /**
     * '24,5 Nm', with the highest setting of the wrench where a self-locking thread adds to it; '20 Nm, then 90°' where an angle
     * ends it; that its drawing says it where no torque with its table and friction is known.
     */
    String torque(BoltedJoint joint) {
        BigDecimal torque = JointsPage.ofTorque(joint, BoltedJoint::torqueNm);
        if (torque == null) {
            return joint.stages()
                    .filter(JointFacts.Stages::byAngle)
                    .map(stages -> newtonMetres(stages.lastTorqueNm()) + angles(stages))
                    .orElseGet(() -> phrases.say("torqueUnknown"));
        }
        BigDecimal wrench = joint.wrenchNm();
        return wrench == null || joint.prevailingNm() == null
                ? newtonMetres(torque)
                : phrases.say("wrench", newtonMetres(torque), newtonMetres(wrench));
    }

    /** Rounds, order, thread lock and whether it is signed for; empty where there is nothing to say. */
    String how(BoltedJoint joint) {
        return Stream.of(
                        joint.stages().map(stages -> stages(joint, stages)).orElse(""),
                        secured(joint),
                        joint.safety() ? phrases.say("toSign") : "")
                .filter(says -> !says.isEmpty())
                .collect(Collectors.joining(phrases.say("next")));
    }

    /** Thread lock, or what the joint's own data names; a self-locking nut stands among its washers. */
    private String secured(BoltedJoint joint) {
        Wording threadLock = joint.fixing().threadLock();
        return threadLock != null
                ? phrases.say("threadLock", threadLock.in(language))
                : joint.otherwiseSecured()
                        .filter(says -> joint.prevailingNm() == null)
                        .map(says -> says.in(language))
                        .orElse("");
    }

    /** What a bolt needs that no row of a card says: how a wrench is set, what the friction of a torque stands for. */
    List<String> explained(List<BoltedJoint> here) {
        if (here.isEmpty()) {
            return List.of();
        }
        return Stream.of(
                        Optional.of("threads"),
                        Optional.of("lockFriction")
                                .filter(key -> any(here, joint -> joint.fixing().threadLock() != null)),
                        Optional.of("runningTorque").filter(key -> any(here, joint -> joint.prevailingNm() != null)))
                .flatMap(Optional::stream)
                .map(phrases::say)
                .toList();
    }

    private static boolean any(List<BoltedJoint> joints, Predicate<BoltedJoint> is) {
        return joints.stream().anyMatch(is);
    }

    String newtonMetres(BigDecimal torqueNm) {
        return phrases.number(torqueNm) + " Nm";
    }

    private String angles(JointFacts.Stages stages) {
        return stages.anglesDegrees().stream()
                .map(angle -> phrases.say("thenAngle", phrases.number(angle)))
                .collect(Collectors.joining());
    }

    /** A round that leaves out what a self-locking nut takes ends below the torque of the thread. */
    private String stages(BoltedJoint joint, JointFacts.Stages stages) {
        String torques = stages.torquesNm().stream().map(this::newtonMetres).collect(Collectors.joining(", "));
        String sequence = stages.sequence().stream().map(String::valueOf).collect(Collectors.joining("-"));
        String order = stages.order() == null ? sequence : stages.order().in(language);
        return phrases.say("inStages", torques + angles(stages))
                + (joint.prevailingNm() == null ? "" : phrases.say("eachWithRunning"))
                + (order.isEmpty() ? "" : phrases.say("next") + phrases.say("inOrder", order));
    }
}
