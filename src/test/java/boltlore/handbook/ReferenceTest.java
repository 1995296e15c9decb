package boltlore.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReferenceTest {

    private static final Path SCHEMAS = Path.of("catalog/schema");

    @Test
    void every_field_of_every_schema_stands_in_it() throws IOException {
        String reference = Reference.markdown(SCHEMAS);
        Set<String> missing = new TreeSet<>();
        try (Stream<Path> files = Files.list(SCHEMAS)) {
            for (Path file :
                    files.filter(each -> !each.endsWith("common.schema.json")).toList()) {
                for (String field : fields(new ObjectMapper().readTree(Files.readString(file)))) {
                    if (!reference.contains("." + field + "` |") && !reference.contains("`" + field + "` |")) {
                        missing.add(file.getFileName() + ": " + field);
                    }
                }
            }
        }

        assertThat(missing).isEmpty();
    }

    @Test
    void a_field_has_its_kind_bounds_unit_and_meaning() throws IOException {
        assertThat(Reference.markdown(SCHEMAS).lines())
                .anyMatch(row -> row.startsWith("| `parts[].offers[].breaks[].from` | [positive](#kind-positive), ")
                        && row.contains("at most 1000000000")
                        && row.endsWith("| yes | Quantity from which it holds, in the part's unit. |"));
    }

    @ParameterizedTest
    @CsvSource({
        "lengthMm, mm",
        "areaMm2, mm²",
        "areaM2, m²",
        "pricePerM2, money a m²",
        "metalC, °C",
        "name, ''",
        "usableKwh, kWh"
    })
    void the_unit_is_what_the_end_of_the_name_says(String field, String unit) {
        assertThat(Reference.unit(field)).isEqualTo(unit);
    }

    private static Set<String> fields(JsonNode node) {
        Set<String> fields = new TreeSet<>();
        node.path("properties").properties().forEach(each -> {
            if (each.getValue().has("description") && !each.getKey().equals("$schema")) {
                fields.add(each.getKey());
            }
        });
        List.copyOf(node.findValues("properties"))
                .forEach(below -> below.properties().forEach(each -> {
                    if (each.getValue().has("description") && !each.getKey().equals("$schema")) {
                        fields.add(each.getKey());
                    }
                    fields.addAll(fields(each.getValue()));
                }));
        return fields;
    }
}
