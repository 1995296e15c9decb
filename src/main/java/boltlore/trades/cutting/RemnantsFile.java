package boltlore.trades.cutting;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Material;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.SchemaName;
import boltlore.json.TextShape;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A file of remnants at hand: read against the catalogue's materials, and written for the next time. */
public final class RemnantsFile {

    static final String SCHEMA = "remnants.schema.json";

    private final Catalogue catalogue;
    private final Faults faults = new Faults();
    private final Map<String, Integer> lines = new HashMap<>();

    RemnantsFile(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * The rack in the order of the file, or everything that is wrong with it.
     *
     * @param file what messages call it
     */
    public static Outcome<RemnantRack> parse(String file, byte[] bytes, Catalogue catalogue) {
        return JsonFile.parse(file, bytes).then(json -> new RemnantsFile(catalogue).rack(json));
    }

    /** The file's text, which {@link #parse} reads again. */
    static String written(RemnantRack rack) {
        return JsonOut.object()
                .put("$schema", SCHEMA)
                .put("remnants", JsonOut.list(rack.remnants(), RemnantsFile::json))
                .put("usedUp", JsonOut.list(rack.usedUp(), RemnantsFile::json))
                .written();
    }

    private static JsonOut json(Remnant remnant) {
        return JsonOut.object()
                .put("remnant", remnant.name())
                .put("material", remnant.material())
                .put("lengthMm", remnant.lengthMm())
                .putIfAny("heat", remnant.heat());
    }

    private Outcome<RemnantRack> rack(Json json) {
        return rack(ObjectReader.of(json, faults));
    }

    Outcome<RemnantRack> rack(ObjectReader reader) {
        SchemaName.check(reader, SCHEMA);
        List<Remnant> remnants = reader.list("remnants", this::remnant);
        List<Remnant> usedUp = reader.findObjects("usedUp", this::usedUp);
        reader.done();
        return faults.orElse(new RemnantRack(remnants, usedUp));
    }

    private Remnant remnant(ObjectReader reader) {
        Remnant remnant = usedUp(reader);
        if (reader.sound()) {
            check(remnant, reader);
        }
        return remnant;
    }

    /** Its material may have left the catalogue since. */
    private Remnant usedUp(ObjectReader reader) {
        Remnant remnant = new Remnant(
                reader.text("remnant", TextShape.ORDER_NAME),
                reader.text("material", TextShape.NAME),
                reader.decimal("lengthMm", Range.above(0, 100_000)),
                reader.findText("heat", TextShape.LINE).orElse(""));
        if (reader.sound()) {
            once(remnant, reader);
        }
        return remnant;
    }

    private void once(Remnant remnant, ObjectReader reader) {
        Integer before = lines.putIfAbsent(remnant.name(), reader.spot().line());
        if (before != null) {
            String found = "'" + remnant.name() + "' a second time; it already stands in line " + before;
            reader.faultAt("remnant", found, "each remnant once", "Remove one of the two.");
        }
    }

    private void check(Remnant remnant, ObjectReader reader) {
        Material material = catalogue.materials().get(remnant.material());
        if (material == null) {
            String advice =
                    Nearest.advice(remnant.material(), catalogue.materials().keySet(), "");
            reader.faultAt("material", "'" + remnant.material() + "'", "a material of the catalogue", advice);
        } else if (material.bars() == null) {
            reader.faultAt("material", "'" + material.name() + "'", "a material that is bought in bars", "");
        }
    }
}
