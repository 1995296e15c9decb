package boltlore.catalogue.json;

import boltlore.catalogue.Blank;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Cut;
import boltlore.catalogue.Drawing;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.Hole;
import boltlore.catalogue.Joined;
import boltlore.catalogue.Making;
import boltlore.catalogue.Operation;
import boltlore.catalogue.Structure;
import boltlore.json.Allowed;
import boltlore.json.Faults;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import boltlore.json.Values;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a part is made of and how it is made. */
final class MakingReading {
    private static final Range LEG = Range.above(0, 20_000);

    /** Beyond this the faces meet too far out for outside lengths to mean anything. */
    private static final Range BEND = Range.above(0, 135);

    private static final Allowed<Joined> JOINED = Allowed.of(Joined.values());
    private static final Allowed<Fixing.Washer> WASHERS = Allowed.of(Fixing.Washer.values());
    private static final KeyRule WITH_ITS_TABLE = new KeyRule.Needs("torqueNm", "torqueTable", "friction");
    private static final Range TIMES = Range.above(0, 10);
    private static final Range PLUS = Range.between(-100_000, 100_000);
    private static final Range END_ANGLE = Range.between(-89, 89);

    private final Reading reading;

    MakingReading(Reading reading) {
        this.reading = reading;
    }

    Structure structure(ObjectReader reader) {
        Integer lengthMm = lengthMm(reader);
        return new Structure(
                reader.findSomeObjects("contains", each -> contained(each, lengthMm)),
                reader.findOneOf("joined", JOINED),
                reader.truth("stocked", false),
                reader.findDecimal("weighedKg", Range.POSITIVE));
    }

    /** Null where it is missing or will not do, which is told where it is read. */
    private static @Nullable Integer lengthMm(ObjectReader reader) {
        return reader.member("lengthMm")
                .flatMap(json -> Values.whole(json, 1, PartsFile.LONGEST_MM, new Faults()))
                .orElse(null);
    }

    private Contained contained(ObjectReader reader, @Nullable Integer lengthMm) {
        reader.oneWay("quantity", "perMetre");
        PartNumber part = reading.part(reader, "part");
        BigDecimal quantity = reader.findDecimal("quantity", Range.QUANTITY);
        BigDecimal perMetre = reader.findDecimal("perMetre", Range.QUANTITY);
        if (perMetre != null && lengthMm == null) {
            reader.faultAt(
                    "perMetre", "'perMetre' in a part without 'lengthMm'", "a part whose length is known", "Add it.");
        }
        Contained contained = perMetre == null || lengthMm == null
                ? new Contained(part, quantity == null ? BigDecimal.ONE : quantity)
                : new Contained(part, along(perMetre, lengthMm), perMetre);
        return reading.sources().put(contained, reader.spot());
    }

    private static BigDecimal along(BigDecimal perMetre, int lengthMm) {
        return perMetre.multiply(BigDecimal.valueOf(lengthMm).movePointLeft(3)).stripTrailingZeros();
    }

    Making making(ObjectReader reader) {
        return new Making(
                reader.findObject("drawing", MakingReading::drawing).orElse(null),
                reading.findMentioned(reader, "material", Kind.MATERIAL),
                blank(reader),
                reader.findObjects("cut", this::cut),
                reader.findObjects("operations", MakingReading::operation));
    }

    private @Nullable Blank blank(ObjectReader reader) {
        return reader.findObject("blank", each -> reading.sources().put(blankReading(each), each.spot()))
                .orElse(null);
    }

    private static Drawing drawing(ObjectReader reader) {
        return new Drawing(reader.text("number", TextShape.LINE), reader.text("issue", TextShape.LINE));
    }

    private Cut cut(ObjectReader reader) {
        Cut cut = new Cut(
                reading.mentioned(reader, "material", Kind.MATERIAL),
                reader.decimal("lengthMm", Range.above(0, 100_000)),
                reader.whole("count", 1, 1_000),
                endAngles(reader),
                reader.findObject("measured", MakingReading::measured).orElse(null));
        return reading.sources().put(cut, reader.spot());
    }

    private static Cut.Measured measured(ObjectReader reader) {
        BigDecimal times = reader.findDecimal("times", TIMES);
        BigDecimal plusMm = reader.findDecimal("plusMm", PLUS);
        return new Cut.Measured(
                reader.text("measure", TextShape.NAME),
                times == null ? BigDecimal.ONE : times,
                plusMm == null ? BigDecimal.ZERO : plusMm);
    }

    private static List<BigDecimal> endAngles(ObjectReader reader) {
        List<BigDecimal> angles = reader.findDecimals("endAngles", END_ANGLE);
        if (reader.sound() && reader.has("endAngles") && angles.size() != 2) {
            reader.faultAt("endAngles", "a list of " + angles.size(), "one angle in degrees for each end", "");
        }
        return angles.size() == 2 ? angles : List.of(BigDecimal.ZERO, BigDecimal.ZERO);
    }

    private static Operation operation(ObjectReader reader) {
        return new Operation(
                reader.text("operation", TextShape.LINE),
                reader.decimal("setUpMin", Range.NOT_NEGATIVE),
                reader.decimal("runMin", Range.NOT_NEGATIVE));
    }

    static Fixing fixing(ObjectReader reader) {
        Fixing fixing = new Fixing(
                reader.text("thread", TextShape.LINE),
                reader.findDecimal("lengthMm", Range.above(0, 10_000)),
                reader.findText("propertyClass", TextShape.LINE).orElse(null),
                reader.findDecimal("torqueNm", Range.above(0, 10_000)),
                reader.findText("torqueTable", TextShape.LINE).orElse(null),
                reader.findDecimal("friction", Range.above(0, 1)),
                reader.findWording("threadLock").orElse(null),
                reader.findObject("prevailing", MakingReading::prevailing).orElse(null),
                reader.findOneOf("washer", WASHERS));
        if (reader.breaks(WITH_ITS_TABLE)) {
            reader.faultAt(
                    "torqueNm",
                    "a torque alone",
                    "a torque with its 'torqueTable' and the 'friction' it stands for",
                    "A torque means nothing without them.");
        }
        return fixing;
    }

    private static Fixing.Prevailing prevailing(ObjectReader reader) {
        return new Fixing.Prevailing(
                reader.decimal("torqueNm", Range.above(0, 1_000)), reader.text("table", TextShape.LINE));
    }

    static Hole hole(ObjectReader reader) {
        return new Hole(reader.decimal("diameterMm", Range.above(0, 1000)), reader.whole("count", 1, 10_000));
    }

    /** The flat piece of sheet that a part is bent from. */
    private static Blank blankReading(ObjectReader reader) {
        Blank blank = new Blank(
                reader.decimal("widthMm", LEG),
                reader.findDecimals("legsMm", LEG),
                reader.findDecimals("bendsDegrees", BEND));
        if (reader.sound() && blank.legsMm().size() != blank.bendsDegrees().size() + 1) {
            reader.fault(
                    "legs: " + blank.legsMm().size() + ", bends: "
                            + blank.bendsDegrees().size(),
                    "one leg more than there are bends",
                    "A flat piece has one leg and no bend.");
        }
        return blank;
    }
}
