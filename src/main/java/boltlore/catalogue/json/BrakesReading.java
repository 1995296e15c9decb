package boltlore.catalogue.json;

import boltlore.catalogue.Braking;
import boltlore.catalogue.Braking.Brakes;
import boltlore.catalogue.Braking.Category;
import boltlore.catalogue.Braking.Vacuum;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;

/** 'brakes' and 'vacuums' of families/…/driving.json. */
final class BrakesReading {

    private static final Allowed<Category> CATEGORY = Allowed.of(Category.values(), Category::name);
    private static final Range PERCENT = Range.between(0, 100);
    private static final Range LITRES = Range.above(0, 100);
    private static final Range KPA = Range.above(0, 100);
    private static final int MOST_APPLICATIONS = 50;

    private final ConditionReading overOptions;

    BrakesReading(ConditionReading overOptions) {
        this.overOptions = overOptions;
    }

    Braking read(ObjectReader reader) {
        return new Braking(reader.findObjects("brakes", this::brakes), reader.findObjects("vacuums", this::vacuum));
    }

    private Brakes brakes(ObjectReader reader) {
        if (reader.has("kneeKn") != reader.has("beyondFrontPercent")) {
            reader.fault("one of 'kneeKn' and 'beyondFrontPercent'", "both of them, or none", "Add the other.");
        }
        return new Brakes(
                overOptions.orAlways(reader, "when"),
                reader.oneOf("category", CATEGORY),
                reader.decimal("frontPercent", PERCENT),
                reader.findDecimal("kneeKn", Range.above(0, 100)),
                reader.findDecimal("beyondFrontPercent", PERCENT),
                reader.text("source"));
    }

    private Vacuum vacuum(ObjectReader reader) {
        Vacuum vacuum = new Vacuum(
                overOptions.orAlways(reader, "when"),
                reader.decimal("reservoirLitres", LITRES),
                reader.decimal("restLitres", LITRES),
                reader.decimal("strokeLitres", LITRES),
                reader.decimal("cutInKpa", KPA),
                reader.decimal("cutOutKpa", KPA),
                reader.decimal("leastKpa", KPA),
                reader.whole("applications", 1, MOST_APPLICATIONS),
                reader.decimal("pumpLitresPerMin", Range.above(0, 1_000)),
                reader.decimal("exponent", Range.between(1, 2)),
                reader.text("source"));
        if (reader.sound() && !isRising(vacuum)) {
            reader.fault(
                    "depressions of " + vacuum.leastKpa() + ", " + vacuum.cutInKpa() + " and " + vacuum.cutOutKpa()
                            + " kPa",
                    "'leastKpa', 'cutInKpa' and 'cutOutKpa' in rising order",
                    "The pump starts before too little is left, and stops above that.");
        }
        return vacuum;
    }

    private static boolean isRising(Vacuum vacuum) {
        return vacuum.leastKpa().compareTo(vacuum.cutInKpa()) < 0
                && vacuum.cutInKpa().compareTo(vacuum.cutOutKpa()) < 0;
    }
}
