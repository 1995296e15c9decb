package boltlore.catalogue.json;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bring.Brought;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Fault;
import boltlore.order.json.OrderReader;
import boltlore.trades.cutting.RemnantsFile;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A stranger among the keys is put into every object in turn: both must refuse it, and both name the same keys. */
@DisplayName("Schema and program know the same keys")
class SchemaKeysTest {

    private static final String STRANGER = "stranger";
    private static final Path SMALL = Path.of("src/test/resources/small");

    /** Keys of conditions, which the program reads by their own language. */
    private static final Set<String> OF_CONDITIONS = Set.of("any", "all", "not", "filled");

    @TempDir
    private Path folder;

    private SmallCatalogue small;
    private Catalogue catalogue;

    @BeforeEach
    void begin() {
        small = SmallCatalogue.in(folder);
        catalogue = small.catalogue();
    }

    static List<String> kinds() {
        return Schemas.files().stream()
                .map(file -> file.getFileName().toString())
                .filter(name -> !name.equals("common.schema.json"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void in_files_of_this_kind(String schema) {
        Set<String> known = new TreeSet<>();
        for (Path file : Schemas.jsonFiles(SMALL)) {
            String json = Schemas.text(file);
            if (Schemas.nameIn(json).equals(schema)) {
                keys(SMALL.relativize(file).toString(), json, schema, known);
            }
        }
        Set<String> inSchema = new TreeSet<>();
        collect(Schemas.tree(Schemas.text(Schemas.FOLDER.resolve(schema))), inSchema, new TreeSet<>());
        inSchema.removeAll(OF_CONDITIONS);
        assertThat(known).isEqualTo(inSchema);
    }

    private void keys(String file, String json, String schema, Set<String> into) {
        for (JsonPointer pointer : objects(Schemas.tree(json), JsonPointer.empty())) {
            JsonNode tree = Schemas.tree(json);
            ((ObjectNode) tree.at(pointer)).put(STRANGER, "x");
            List<Fault> faults = faults(file, tree.toString());
            assertThat(faults).as(file + pointer).isNotEmpty();
            for (Fault fault : faults) {
                if (fault.found().equals("the unknown key '" + STRANGER + "'")) {
                    into.addAll(Arrays.asList(
                            fault.expected().replace("one of ", "").split(", ", -1)));
                    assertThat(Schemas.errors(schema, tree.toString()))
                            .as(file + pointer)
                            .isNotEmpty();
                }
            }
        }
    }

    private List<Fault> faults(String file, String json) {
        if (file.startsWith("orders")) {
            return OrderReader.parse(file, json.getBytes(StandardCharsets.UTF_8), catalogue)
                    .faults();
        }
        if (file.startsWith("remnants")) {
            return RemnantsFile.parse(file, json.getBytes(StandardCharsets.UTF_8), catalogue)
                    .faults();
        }
        if (file.startsWith("lists")) {
            return Brought.mapping(file, json.getBytes(StandardCharsets.UTF_8)).faults();
        }
        String before = small.text(file);
        List<Fault> faults = small.write(file, json).faults();
        small.write(file, before);
        return faults;
    }

    private static List<JsonPointer> objects(JsonNode node, JsonPointer at) {
        List<JsonPointer> objects = new ArrayList<>();
        if (node.isObject()) {
            objects.add(at);
            node.properties()
                    .forEach(member -> objects.addAll(objects(member.getValue(), at.appendProperty(member.getKey()))));
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            objects.addAll(objects(node.get(i), at.appendIndex(i)));
        }
        return objects;
    }

    private static void collect(JsonNode schema, Set<String> keys, Set<String> followed) {
        if (schema.has("additionalProperties")
                && schema.get("additionalProperties").isBoolean()) {
            schema.get("properties").fieldNames().forEachRemaining(keys::add);
        }
        schema.forEach(part -> collect(part, keys, followed));
        String ref = schema.path("$ref").asText();
        if (!ref.isEmpty() && followed.add(ref.substring(ref.indexOf('#')))) {
            JsonNode common = Schemas.tree(Schemas.text(Schemas.FOLDER.resolve("common.schema.json")));
            collect(common.at(ref.substring(ref.indexOf('#') + 1)), keys, followed);
        }
    }
}
