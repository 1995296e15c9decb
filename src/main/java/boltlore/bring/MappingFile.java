package boltlore.bring;

import boltlore.faults.Outcome;
import boltlore.json.Allowed;
import boltlore.json.Faults;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.json.ObjectReader;
import boltlore.json.SchemaName;
import boltlore.json.TextShape;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A mapping as JSON. */
public final class MappingFile {

    /** What files of mappings end with. */
    public static final String ENDING = ".bring.json";

    private static final String SCHEMA = "bring.schema.json";
    private static final Allowed<Role> ROLES = Allowed.of(Role.values(), Role::code);

    private MappingFile() {}

    /** The mapping in those bytes, or all that is wrong with it. */
    static Outcome<Mapping> read(String file, byte[] bytes) {
        return JsonFile.parse(file, bytes).then(tree -> {
            Faults faults = new Faults();
            ObjectReader reader = ObjectReader.of(tree, faults);
            SchemaName.check(reader, SCHEMA);
            Mapping mapping = ask(reader);
            reader.done();
            return faults.orElse(mapping);
        });
    }

    /** Asks for all that a mapping may hold. */
    public static Mapping ask(ObjectReader reader) {
        return new Mapping(
                reader.text("family", TextShape.NAME),
                reader.findText("encoding").orElse(""),
                reader.findObject("missing", MappingFile::missing).orElse(Map.of()),
                reader.findObjects("tables", MappingFile::table),
                reader.findObjects("answers", MappingFile::asked));
    }

    private static Map<String, String> missing(ObjectReader reader) {
        Map<String, String> missing = new LinkedHashMap<>();
        for (String key : Missing.MISSING) {
            reader.findText(key).ifPresent(value -> missing.put(key, value));
        }
        return missing;
    }

    private static Mapping.Tabled table(ObjectReader reader) {
        return new Mapping.Tabled(
                reader.text("head"), reader.truth("read", true), reader.objects("columns", MappingFile::use));
    }

    private static Mapping.Use use(ObjectReader reader) {
        return new Mapping.Use(
                reader.text("column"),
                reader.findText("heading").orElse(""),
                reader.oneOf("is", ROLES),
                reader.findText("option").orElse(""),
                reader.findText("value").orElse(""),
                reader.truth("asked", false),
                reader.findText("because").orElse(""));
    }

    private static Mapping.Asked asked(ObjectReader reader) {
        return new Mapping.Asked(
                reader.text("at"),
                reader.findText("asks").orElse(""),
                reader.findText("likely").orElse(""),
                reader.text("is"));
    }

    /**
     * Its text, the same for the same mapping.
     *
     * @param schemas the way from it to the folder of schemas
     */
    static String write(Mapping mapping, String schemas) {
        JsonOut.Members json = JsonOut.object()
                .put("$schema", schemas + "/" + SCHEMA)
                .put("family", mapping.family())
                .putIfAny("encoding", mapping.encoding());
        JsonOut.Members missing = JsonOut.object();
        new TreeMap<>(mapping.missing()).forEach(missing::put);
        return json.put("missing", missing)
                .put("answers", JsonOut.list(mapping.answers(), MappingFile::json))
                .put("tables", JsonOut.list(mapping.tables(), MappingFile::json))
                .written();
    }

    private static JsonOut json(Mapping.Asked asked) {
        return JsonOut.object()
                .put("at", asked.at())
                .put("is", asked.is())
                .putIfAny("likely", asked.likely())
                .putIfAny("asks", asked.asks());
    }

    private static JsonOut json(Mapping.Tabled table) {
        return JsonOut.object()
                .put("head", table.head())
                .put("read", table.read())
                .put("columns", JsonOut.list(List.copyOf(table.columns()), MappingFile::json));
    }

    private static JsonOut json(Mapping.Use use) {
        JsonOut.Members json = JsonOut.object()
                .put("column", use.column())
                .putIfAny("heading", use.heading())
                .put("is", use.is().code())
                .putIfAny("option", use.option())
                .putIfAny("value", use.value());
        return (use.asked() ? json.put("asked", true) : json).putIfAny("because", use.because());
    }
}
