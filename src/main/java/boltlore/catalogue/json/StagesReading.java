package boltlore.catalogue.json;

import boltlore.catalogue.JointFacts;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads the rounds in which a joint is tightened, and the order in which each round goes. */
final class StagesReading {

    private static final KeyRule ONE_ORDER = new KeyRule.Apart("order", "sequence");
    private static final Range TORQUE = Range.above(0, 10_000);

    /** Beyond two turns somebody has counted turns and not degrees. */
    private static final Range ANGLE = Range.above(0, 720);

    private static final Range BOLT = Range.between(1, 200);

    private record Stage(
            @Nullable BigDecimal torqueNm, @Nullable BigDecimal angleDegrees) {}

    private final Reading reading;

    StagesReading(Reading reading) {
        this.reading = reading;
    }

    JointFacts.@Nullable Stages read(ObjectReader reader) {
        List<Stage> stages = reader.findSomeObjects("stages", StagesReading::stage);
        Wording order = reading.findWording(reader, "order").orElse(null);
        List<Integer> sequence = reader.findDecimals("sequence", BOLT).stream()
                .map(BigDecimal::intValue)
                .toList();
        for (String key : List.of("order", "sequence")) {
            if (reader.breaks(new KeyRule.Needs(key, "stages"))) {
                reader.faultAt(key, "'" + key + "' without 'stages'", "the rounds that go in that order", "Add them.");
            }
        }
        if (reader.breaks(ONE_ORDER)) {
            reader.faultAt("sequence", "'order' and 'sequence'", "one of the two", "Remove one.");
        }
        if (reader.sound() && reader.has("stages")) {
            rising(stages, reader);
            eachOnce(sequence, reader);
        }
        List<BigDecimal> torques = stages.stream()
                .flatMap(stage -> Stream.ofNullable(stage.torqueNm()))
                .toList();
        List<BigDecimal> angles = stages.stream()
                .flatMap(stage -> Stream.ofNullable(stage.angleDegrees()))
                .toList();
        return torques.isEmpty() ? null : new JointFacts.Stages(torques, angles, order, sequence);
    }

    private static Stage stage(ObjectReader reader) {
        reader.oneWay("torqueNm", "angleDegrees");
        return new Stage(reader.findDecimal("torqueNm", TORQUE), reader.findDecimal("angleDegrees", ANGLE));
    }

    /** Torques rise, and angles count from the snug joint that a torque leaves. */
    private static void rising(List<Stage> stages, ObjectReader reader) {
        BigDecimal before = BigDecimal.ZERO;
        boolean turned = false;
        for (Stage stage : stages) {
            BigDecimal torque = stage.torqueNm();
            if (torque == null && before.signum() == 0) {
                reader.faultAt(
                        "stages",
                        "an angle before any torque",
                        "a torque first, that makes the joint snug",
                        "An angle is counted from the snug joint.");
                return;
            } else if (torque != null && (turned || torque.compareTo(before) <= 0)) {
                reader.faultAt(
                        "stages",
                        torque.toPlainString() + " Nm after " + (turned ? "an angle" : before.toPlainString() + " Nm"),
                        "torques that rise, then angles",
                        "Sort them.");
                return;
            }
            turned |= torque == null;
            before = torque == null ? before : torque;
        }
    }

    private static void eachOnce(List<Integer> sequence, ObjectReader reader) {
        List<Integer> sorted = new ArrayList<>(sequence);
        sorted.sort(null);
        if (!sorted.equals(IntStream.rangeClosed(1, sequence.size()).boxed().toList())) {
            reader.faultAt(
                    "sequence",
                    "the numbers " + sequence,
                    "each bolt from 1 on once",
                    "Number the bolts as the drawing does, without a gap.");
        }
    }

    /** The last torque is what the joint's own drawing asks for, where it names both. */
    static void agree(JointFacts joint, ObjectReader reader) {
        JointFacts.Stages stages = joint.stages();
        JointFacts.OwnTorque own = joint.torque();
        if (reader.sound()
                && stages != null
                && own != null
                && !stages.byAngle()
                && stages.lastTorqueNm().compareTo(own.torqueNm()) != 0) {
            reader.faultAt(
                    "stages",
                    "a last round of " + stages.lastTorqueNm().toPlainString() + " Nm",
                    own.torqueNm().toPlainString() + " Nm, as under 'torque'",
                    "Let both say the same.");
        }
    }
}
