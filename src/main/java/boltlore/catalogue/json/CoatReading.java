package boltlore.catalogue.json;

import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Feature;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.util.List;

/** How a part is coated. */
final class CoatReading {

    private static final Allowed<Feature.Treat> TREATS = Allowed.of(Feature.Treat.values());
    private static final Range SECTION = Range.above(0, 1000);

    private final Reading reading;

    CoatReading(Reading reading) {
        this.reading = reading;
    }

    CoatingSpec coat(ObjectReader reader) {
        reader.oneWay("role", "finish");
        // A role is a matter of each family; whether every one that uses the part has it is compared later.
        String role = reader.findText("role", TextShape.NAME).orElse(null);
        String finish = reading.findMentioned(reader, "finish", Kind.FINISH);
        BigDecimal area = reader.decimal("areaM2", Range.above(0, 1000));
        Section section = reader.object("sectionMm", CoatReading::section);
        List<Feature> features = reader.findObjects("features", CoatReading::feature);
        int hangPoints = reader.whole("hangPoints", 1, 1000);
        EnvelopeMm envelope =
                reader.findObject("envelopeMm", CoatingFile::sizeMm).orElse(null);
        CoatingSpec coat = new CoatingSpec(
                role, finish, area, section.thinnest(), section.thickest(), features, hangPoints, envelope);
        return reading.sources().put(coat, reader.spot());
    }

    private record Section(BigDecimal thinnest, BigDecimal thickest) {}

    private static Section section(ObjectReader reader) {
        Section section = new Section(reader.decimal("thinnest", SECTION), reader.decimal("thickest", SECTION));
        if (reader.sound() && section.thinnest().compareTo(section.thickest()) > 0) {
            reader.fault(
                    "thinnest " + section.thinnest().toPlainString() + " mm, thickest "
                            + section.thickest().toPlainString() + " mm",
                    "the thinnest section at most as thick as the thickest",
                    "Swap the two.");
        }
        return section;
    }

    private static Feature feature(ObjectReader reader) {
        Feature feature = new Feature(
                reader.oneOf("kind", CoatingFile.FEATURE_KINDS),
                reader.text("size", TextShape.LINE),
                reader.whole("count", 1, 10_000),
                reader.oneOf("treat", TREATS));
        if (reader.sound() && feature.treat() == Feature.Treat.CHASED && feature.kind() != Feature.Kind.THREAD) {
            reader.faultAt("treat", "'chased'", "'masked': only a thread is chased after coating", "");
        }
        return feature;
    }
}
