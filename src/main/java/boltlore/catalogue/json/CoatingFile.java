package boltlore.catalogue.json;

import boltlore.catalogue.Booth;
import boltlore.catalogue.BoothWork;
import boltlore.catalogue.ChangeOvers;
import boltlore.catalogue.Coater;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.CoatingTime;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Mask;
import boltlore.catalogue.Oven;
import boltlore.catalogue.Powder;
import boltlore.catalogue.TooLarge;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;

/** coating.json: ovens, booths, outside coaters, masks and powders. */
final class CoatingFile {

    static final Allowed<Feature.Kind> FEATURE_KINDS = Allowed.of(Feature.Kind.values());

    private static final Allowed<Boolean> WHO_FITS_MASKS =
            Allowed.of(new Boolean[] {false, true}, byCoater -> byCoater ? "coater" : "us");

    private final Reading reading;

    CoatingFile(Reading reading) {
        this.reading = reading;
    }

    CoatingShop read(ObjectReader reader) {
        return new CoatingShop(
                Keyed.by(reader.findObjects("ovens", this::oven), Oven::name),
                reader.findObjects("booths", this::booth),
                Keyed.by(reader.findObjects("coaters", this::coater), Coater::name),
                reader.findObjects("masks", this::mask),
                Keyed.by(reader.findObjects("powders", this::powder), Powder::code),
                reader.decimal("ownCostPerM2", Range.NOT_NEGATIVE),
                reader.findObject("changeOvers", CoatingFile::changeOvers).orElse(ChangeOvers.NONE),
                new CoatingTime(orNone(reader, "dayMinutes", 60, 1440), orNone(reader, "roundDays", 1, 365)));
    }

    private Oven oven(ObjectReader reader) {
        return new Oven(
                reading.named(reader, "oven", Kind.OVEN),
                reader.text("says"),
                reader.object("insideMm", CoatingFile::sizeMm),
                reader.whole("hooks", 1, 10_000),
                reader.decimal("loadKg", Range.POSITIVE),
                reader.decimal("loadAreaM2", Range.POSITIVE),
                reader.decimal("fillPercent", Range.above(0, 100)),
                reader.findDecimal("sectionRatio", Range.between(1, 1000)),
                orNone(reader, "minutesBesideCure", 1, 1440),
                orNone(reader, "rails", 1, 100),
                reader.findObject("tooLarge", this::tooLarge).orElse(null),
                orNone(reader, "heatUpMinPerMm", Range.above(0, 60)));
    }

    private TooLarge tooLarge(ObjectReader reader) {
        return new TooLarge(
                reading.mentioned(reader, "coater", Kind.COATER),
                reader.decimal("pricePerM2", Range.NOT_NEGATIVE),
                orNone(reader, "freightPerKg", Range.NOT_NEGATIVE));
    }

    private static ChangeOvers changeOvers(ObjectReader reader) {
        return new ChangeOvers(
                reader.object("toDarker", CoatingFile::work),
                reader.object("toLighter", CoatingFile::work),
                reader.findObject("ofRecovery", CoatingFile::work).orElse(BoothWork.NONE));
    }

    private static BoothWork work(ObjectReader reader) {
        return new BoothWork(
                reader.whole("minutes", 0, 1440),
                reader.whole("people", 0, 100),
                reader.decimal("powderKg", Range.between(0, 1000)));
    }

    private static BigDecimal orNone(ObjectReader reader, String key, Range range) {
        BigDecimal told = reader.findDecimal(key, range);
        return told == null ? BigDecimal.ZERO : told;
    }

    private static int orNone(ObjectReader reader, String key, int least, int most) {
        Integer told = reader.findWhole(key, least, most);
        return told == null ? 0 : told;
    }

    static EnvelopeMm sizeMm(ObjectReader reader) {
        return new EnvelopeMm(
                reader.whole("length", 1, 20_000), reader.whole("width", 1, 20_000), reader.whole("height", 1, 20_000));
    }

    private Booth booth(ObjectReader reader) {
        String powder = reading.findMentioned(reader, "holdsPowder", Kind.POWDER);
        return new Booth(
                reading.named(reader, "booth", Kind.BOOTH),
                reader.text("says"),
                powder == null ? "" : powder,
                reader.findDecimal("reclaimPercent", Range.above(0, 100)));
    }

    private Coater coater(ObjectReader reader) {
        return new Coater(
                reading.named(reader, "coater", Kind.COATER),
                reader.text("says"),
                reader.whole("turnRoundDays", 0, 1000),
                reader.oneOf("fitsMasks", WHO_FITS_MASKS));
    }

    private Mask mask(ObjectReader reader) {
        return new Mask(
                reading.named(reader, "mask", Kind.MASK),
                reader.text("says"),
                reader.oneOf("kind", FEATURE_KINDS),
                reader.text("size", TextShape.LINE));
    }

    private Powder powder(ObjectReader reader) {
        return new Powder(
                reading.named(reader, "powder", Kind.POWDER),
                reader.text("says"),
                reader.decimal("pricePerKg", Range.NOT_NEGATIVE),
                reader.findDecimal("lightness", Range.between(0, 100)),
                reader.findText("neverReclaimed").orElse(""));
    }
}
