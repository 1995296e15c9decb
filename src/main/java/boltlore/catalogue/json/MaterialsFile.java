package boltlore.catalogue.json;

import boltlore.catalogue.Material;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import java.util.Map;

/** materials.json: what parts are cut from. */
final class MaterialsFile {

    private static final Allowed<String> FORMS = Allowed.of("sheet", "plate", "tube", "bar", "angle", "cable");

    private final Reading reading;

    MaterialsFile(Reading reading) {
        this.reading = reading;
    }

    Map<String, Material> read(ObjectReader reader) {
        return Keyed.by(reader.findObjects("materials", this::material), Material::name);
    }

    private Material material(ObjectReader reader) {
        return new Material(
                reading.named(reader, "material", Kind.MATERIAL),
                reader.text("says"),
                reader.oneOf("form", FORMS),
                reader.decimal("densityKgM3", Range.above(0, 25_000)),
                reader.findDecimal("thicknessMm", Range.above(0, 1000)),
                reader.findWhole("barMm", 1, 100_000),
                reader.findDecimal("pricePerKg", Range.NOT_NEGATIVE));
    }
}
