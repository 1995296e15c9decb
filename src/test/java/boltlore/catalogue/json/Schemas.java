package boltlore.catalogue.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The shipped schemas, as an editor would use them. */
final class Schemas {

    static final Path FOLDER = Path.of("catalog/schema");

    /** Any place will do: the schemas refer to one another relatively. */
    private static final String PLACE = "https://schemas.invalid/";

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final SchemaRegistry REGISTRY = SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(shipped()));
    private static final Map<String, Schema> LOADED = new HashMap<>();

    private Schemas() {}

    static List<Path> files() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.sorted().toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** What the schema of that name has against a JSON text. */
    static List<Error> errors(String schemaName, String json) {
        return LOADED.computeIfAbsent(schemaName, Schemas::load).validate(json, InputFormat.JSON);
    }

    /** What the standard's own meta-schema has against a schema. */
    static List<Error> errorsOf(Path schema) {
        return REGISTRY.getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()))
                .validate(text(schema), InputFormat.JSON);
    }

    /** Name of the schema that a file asks for. */
    static String nameIn(String json) {
        String path = tree(json).get("$schema").asText();
        return path.substring(path.lastIndexOf('/') + 1);
    }

    static JsonNode tree(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** All JSON files of a folder but the schemas. */
    static List<Path> jsonFiles(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .filter(file -> !file.toString().endsWith(".schema.json"))
                    .sorted()
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Schema load(String name) {
        return REGISTRY.getSchema(SchemaLocation.of(PLACE + name));
    }

    private static Map<String, String> shipped() {
        Map<String, String> shipped = new HashMap<>();
        files().forEach(file -> shipped.put(PLACE + file.getFileName(), text(file)));
        return shipped;
    }
}
