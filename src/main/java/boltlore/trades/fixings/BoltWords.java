package boltlore.trades.fixings;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts;
import boltlore.measure.Digits;
import boltlore.measure.Wording;
import boltlore.report.Phrases;
import java.math.BigDecimal;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Bolts and their torques for people who fit them, in one language. */
record BoltWords(Phrases phrases, String language) {

    /** 'M8 × 25, 8.8'. */
    String size(BoltedJoint joint) {
        Fixing fixing = joint.fixing();
        BigDecimal length = fixing.lengthMm();
        String propertyClass = fixing.propertyClass();
        return fixing.thread()
                + (length == null ? "" : " × " + Digits.plain(length))
                + (propertyClass == null ? "" : ", " + propertyClass);
    }

    /** '4 × M8 × 25, 8.8 (FX-M8X25); 4 × Flat washer M8 (FX-W8)'. */
    String bolts(BoltedJoint joint) {
        String with = joint.with().stream()
                .map(each -> "; " + Digits.plain(each.quantity()) + " × "
                        + each.part().name().in(language) + " (" + each.part().number() + ")")
                .collect(Collectors.joining());
        return Digits.plain(joint.quantity()) + " × " + size(joint) + " ("
                + joint.bolt().number() + ")" + with;
    }

    /** '24,5 Nm', with what a self-locking thread adds; empty where no torque with its table and friction is known. */
    String torque(BoltedJoint joint) {
        BigDecimal torque = JointsPage.ofTorque(joint, BoltedJoint::torqueNm);
        if (torque == null) {
            return joint.byAngle() ? "" : phrases.say("torqueUnknown");
        }
        BigDecimal prevailing = joint.prevailingNm();
        String said = phrases.number(torque) + " Nm";
        return prevailing == null ? said : said + " " + phrases.say("prevailing", phrases.number(prevailing));
    }

    /** Rounds, order, thread lock and whether it is signed for; empty where there is nothing to say. */
    String how(BoltedJoint joint) {
        return Stream.of(
                        joint.stages().map(this::stages).orElse(""),
                        lock(joint.fixing().threadLock()),
                        joint.safety() ? phrases.say("toSign") : "")
                .filter(says -> !says.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private String lock(@Nullable Wording threadLock) {
        return threadLock == null ? "" : phrases.say("threadLock", threadLock.in(language));
    }

    private String stages(JointFacts.Stages stages) {
        String torques = stages.torquesNm().stream()
                .map(torque -> phrases.number(torque) + " Nm")
                .collect(Collectors.joining(", "));
        String angles = stages.anglesDegrees().stream()
                .map(angle -> phrases.say("thenAngle", phrases.number(angle)))
                .collect(Collectors.joining());
        String sequence = stages.sequence().stream().map(String::valueOf).collect(Collectors.joining("-"));
        String order = stages.order() == null ? sequence : stages.order().in(language);
        return phrases.say("inStages", torques + angles)
                + (order.isEmpty() ? "" : "; " + phrases.say("inOrder", order));
    }
}
