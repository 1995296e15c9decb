package boltlore.bring;

import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/** The files of a small workshop to begin with: no market, no oven, one place to fit parts at, and the usual cautions. */
public final class Start {

    /** Files that are copied as they are, by where they stand in a catalogue. */
    static final List<String> COPIED = List.of(
            "schema/bring.schema.json",
            "schema/cautions.schema.json",
            "schema/coating.schema.json",
            "schema/common.schema.json",
            "schema/companions.schema.json",
            "schema/defaults.schema.json",
            "schema/driving.schema.json",
            "schema/electrics.schema.json",
            "schema/family.schema.json",
            "schema/finishes.schema.json",
            "schema/fits.schema.json",
            "schema/joints.schema.json",
            "schema/kit.schema.json",
            "schema/markets.schema.json",
            "schema/materials.schema.json",
            "schema/order.schema.json",
            "schema/parts.schema.json",
            "schema/pricing.schema.json",
            "schema/remnants.schema.json",
            "schema/shipping.schema.json",
            "schema/tests.schema.json",
            "schema/weights.schema.json",
            "schema/workshop.schema.json",
            "workshop/cautions.json");

    /** The language that every text stands in; a workshop adds its own, and then their texts. */
    private static final String LANGUAGE = "en";

    private final String workshop;
    private final String currency;
    private List<String> stages = List.of("fitting");
    private List<String> subSystems = List.of("parts");
    private List<String> suppliers = List.of();
    private List<String> aisles = List.of("A");

    /** @param currency its code (ISO 4217) */
    public Start(String workshop, String currency) {
        this.workshop = workshop;
        this.currency = currency;
    }

    public Start stages(List<String> names) {
        stages = names;
        return this;
    }

    public Start subSystems(List<String> names) {
        subSystems = names;
        return this;
    }

    public Start aisles(List<String> names) {
        aisles = names;
        return this;
    }

    public Start suppliers(List<String> names) {
        suppliers = names;
        return this;
    }

    /** Texts by path. */
    public SortedMap<String, String> files() {
        SortedMap<String, String> files = new TreeMap<>();
        files.put("workshop/workshop.json", workshopFile());
        files.put("workshop/markets.json", empty("markets").written());
        files.put(
                "workshop/coating.json",
                empty("coating").put("ownCostPerM2", "0").written());
        COPIED.forEach(path -> files.put(path, copied(path)));
        return files;
    }

    private static JsonOut.Members empty(String schema) {
        return JsonOut.object().put("$schema", "../schema/" + schema + ".schema.json");
    }

    private String workshopFile() {
        JsonOut.Members json = empty("workshop")
                .put("workshop", workshop)
                .put("place", "-")
                .put("currency", currency)
                .put("labourPerHour", "0")
                .put("assemblyDays", 0)
                .put("languages", JsonOut.texts(List.of(LANGUAGE)))
                .put(
                        "stages",
                        JsonOut.list(
                                stages,
                                stage -> JsonOut.object().put("stage", stage).put("says", words(stage))))
                .put("subSystems", JsonOut.texts(subSystems))
                .put("aisles", JsonOut.texts(aisles));
        return (suppliers.isEmpty()
                        ? json
                        : json.put(
                                "suppliers",
                                JsonOut.list(
                                        suppliers,
                                        name -> JsonOut.object()
                                                .put("supplier", name)
                                                .put("says", name))))
                .written();
    }

    private static String words(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1).replace('-', ' ');
    }

    private static String copied(String path) {
        try (InputStream in =
                Objects.requireNonNull(Start.class.getResourceAsStream("/boltlore/start/" + path), path)) {
            byte[] bytes = in.readAllBytes();
            return path.startsWith("workshop/")
                    ? JsonFile.parse(path, bytes) instanceof Outcome.Sound<Json> tree
                            ? plain(tree.value()).written()
                            : ""
                    : new String(bytes, StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The same in one language alone. */
    private static JsonOut plain(Json json) {
        if (json instanceof Json.Obj object) {
            Json only = object.members().get(LANGUAGE);
            JsonOut.Members members = JsonOut.object();
            object.members().forEach((key, value) -> members.put(key, plain(value)));
            return only == null ? members : plain(only);
        }
        if (json instanceof Json.Arr list) {
            return JsonOut.list(list.items(), Start::plain);
        }
        return JsonOut.text(json instanceof Json.Text text ? text.text() : json.shown());
    }
}
