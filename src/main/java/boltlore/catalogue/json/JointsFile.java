package boltlore.catalogue.json;

import boltlore.catalogue.JointFacts;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import boltlore.measure.PositionName;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** families/…/joints.json: which joints are signed for, what they clamp and what their threads hold in. */
final class JointsFile {

    private static final Allowed<JointFacts.Into> INTO = Allowed.of(JointFacts.Into.values(), JointFacts.Into::written);
    private static final Range MM = Range.above(0, 1_000);

    private final Reading reading;

    JointsFile(Reading reading) {
        this.reading = reading;
    }

    List<JointFacts> read(ObjectReader reader) {
        return reader.findObjects("joints", this::joint);
    }

    private JointFacts joint(ObjectReader reader) {
        reader.oneWay("position", "joint");
        JointFacts joint = new JointFacts(
                position(reader),
                reader.findText("joint", TextShape.NAME).orElse(""),
                reader.truth("safety", false),
                reader.findDecimal("clampMm", MM),
                reader.findOneOf("into", INTO),
                reader.findDecimal("depthMm", MM));
        return reading.sources().put(joint, reader.spot());
    }

    private @Nullable PositionName position(ObjectReader reader) {
        String name = reading.findMentioned(reader, "position", Kind.POSITION);
        if (name != null) {
            reading.give(Kind.JOINT_POSITION, name, reader.spot("position"));
        }
        return name == null ? null : new PositionName(name);
    }
}
