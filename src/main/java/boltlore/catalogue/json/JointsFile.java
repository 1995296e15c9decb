package boltlore.catalogue.json;

import boltlore.catalogue.JointFacts;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** families/…/joints.json: which joints are signed for, what they clamp and what their threads hold in. */
final class JointsFile {

    private static final Allowed<JointFacts.Into> INTO = Allowed.of(JointFacts.Into.values(), JointFacts.Into::written);
    private static final Range MM = Range.above(0, 1_000);

    /** Against slipping under a load that alternates: common practice, no source. */
    private static final BigDecimal SAFETY = new BigDecimal("1.8");

    private final Reading reading;
    private final StagesReading stages;

    JointsFile(Reading reading) {
        this.reading = reading;
        this.stages = new StagesReading(reading);
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
                reader.findDecimal("depthMm", MM),
                reader.findText("thread", TextShape.LINE).orElse(null),
                reader.findObject("torque", JointsFile::torque).orElse(null),
                reader.findDecimal("tighteningFactor", Range.between(1, 4)),
                reader.findObject("slip", JointsFile::slip).orElse(null),
                reader.findObject("bearing", JointsFile::bearing).orElse(null),
                stages.read(reader),
                reading.findWording(reader, "securedBy").orElse(null));
        StagesReading.agree(joint, reader);
        return reading.sources().put(joint, reader.spot());
    }

    private static JointFacts.OwnTorque torque(ObjectReader reader) {
        return new JointFacts.OwnTorque(
                reader.findText("thread", TextShape.LINE).orElse(""),
                reader.decimal("torqueNm", Range.above(0, 10_000)),
                reader.text("source", TextShape.LINE));
    }

    private static JointFacts.Slip slip(ObjectReader reader) {
        BigDecimal safety = reader.findDecimal("safety", Range.between(1, 10));
        return new JointFacts.Slip(
                reader.decimal("transverseN", Range.above(0, 10_000_000)),
                reader.decimal("friction", Range.above(0, 1)),
                reader.whole("interfaces", 1, 20),
                safety == null ? SAFETY : safety,
                reader.truth("estimate", false),
                reader.text("source", TextShape.LINE));
    }

    private static JointFacts.Bearing bearing(ObjectReader reader) {
        JointFacts.Bearing bearing = new JointFacts.Bearing(
                reader.text("material", TextShape.LINE),
                reader.decimal("limitMpa", Range.above(0, 10_000)),
                reader.findDecimal("outerMm", MM),
                reader.findDecimal("holeMm", MM),
                reader.truth("estimate", false),
                reader.text("source", TextShape.LINE));
        if (bearing.outerMm() != null
                && bearing.holeMm() != null
                && bearing.outerMm().compareTo(bearing.holeMm()) <= 0) {
            reader.faultAt("outerMm", "a ring that ends inside its hole", "'outerMm' above 'holeMm'", "");
        }
        return bearing;
    }

    private @Nullable PositionName position(ObjectReader reader) {
        String name = reading.findMentioned(reader, "position", Kind.POSITION);
        if (name != null) {
            reading.give(Kind.JOINT_POSITION, name, reader.spot("position"));
        }
        return name == null ? null : new PositionName(name);
    }
}
