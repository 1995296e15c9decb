package boltlore.catalogue.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Source of the meta-schema: JSON Schema 2020-12, json-schema.org/draft/2020-12/schema, as the validator ships it. */
@DisplayName("The schemas that help an editor")
class SchemasTest {

    static List<Path> schemas() {
        return Schemas.files();
    }

    @ParameterizedTest
    @MethodSource("schemas")
    @DisplayName("are schemas by the standard's own meta-schema")
    void areSchemas(Path schema) {
        assertThat(Schemas.errorsOf(schema)).isEmpty();
    }

    static Stream<Path> soundFiles() {
        return Stream.of("catalog", "src/test/resources/example/catalog", "src/test/resources/small")
                .flatMap(folder -> Schemas.jsonFiles(Path.of(folder)).stream())
                // Not an order but what is expected of the orders beside it.
                .filter(file -> !file.endsWith(Path.of("orders/expected.json")));
    }

    @ParameterizedTest
    @MethodSource("soundFiles")
    @DisplayName("accept every file that the program accepts")
    void acceptSoundFiles(Path file) {
        String json = Schemas.text(file);
        assertThat(Schemas.errors(Schemas.nameIn(json), json)).isEmpty();
    }

    static List<Path> shippedFiles() {
        return Schemas.jsonFiles(Path.of("catalog")).stream()
                .filter(file -> !file.endsWith(Path.of("orders/expected.json")))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("shippedFiles")
    @DisplayName("are found where the shipped files say they are")
    void areFound(Path file) {
        String named = Schemas.tree(Schemas.text(file)).get("$schema").asText();
        assertThat(file.resolveSibling(named)).isRegularFile();
    }

    static Stream<Slip> nearMisses() {
        return Slip.readAll(Path.of("src/test/resources/slips/near-misses.txt")).stream();
    }

    @ParameterizedTest
    @MethodSource("nearMisses")
    @DisplayName("accept near misses")
    void acceptNearMisses(Slip slip) {
        assertThat(errorsAfter(slip)).isZero();
    }

    static Stream<Slip> slipsOfForm() {
        // What a schema can see: the form of one file, never what other files say.
        List<String> seen = List.of(
                "A unit is one of the known ones",
                "A leaf has a mass",
                "An assembly has none of its own",
                "A hand belongs to a pair",
                "A coat has a role or a finish",
                "A need is for each or on a joint",
                "A joint has a number",
                "A torque names its table and friction",
                "A quantity is above zero",
                "A quantity is not negative",
                "A number has a point, not a comma",
                "A bin has five steps",
                "A part number has no small letters",
                "A limit says either never, or when and then",
                "'filled' stands in no limit",
                "'any' has at least one condition",
                "No option may be called 'any'",
                "A list of values is not empty",
                "A free position is never due",
                "A position is in a bag or a crate",
                "A role of finishes is decided or fixed",
                "A wording has an English text",
                "A coater has a price",
                "A currency is there",
                "An unknown key is named with the nearest one");
        return Stream.of("parts", "conditions", "families", "workshop", "unknown-names")
                .flatMap(name -> Slip.readAll(Path.of("src/test/resources/slips/" + name + ".txt")).stream())
                .filter(slip -> seen.contains(slip.says()));
    }

    @ParameterizedTest
    @MethodSource("slipsOfForm")
    @DisplayName("refuse slips of form")
    void refuseSlipsOfForm(Slip slip) {
        assertThat(errorsAfter(slip)).isPositive();
    }

    @Test
    void none_of_the_slips_of_form_has_been_renamed_away() {
        assertThat(slipsOfForm()).hasSize(25);
    }

    private static long errorsAfter(Slip slip) {
        long errors = 0;
        for (Slip.Change change : slip.changes()) {
            String json = Schemas.text(Path.of("src/test/resources/small", change.file()));
            String changed = json.replace(change.from(), change.to());
            errors += Schemas.errors(Schemas.nameIn(json), changed).size();
        }
        return errors;
    }
}
