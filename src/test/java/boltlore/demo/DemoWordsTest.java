package boltlore.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the demo catalogue gives people to read, in each language as its writers set it down. */
class DemoWordsTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** A decimal point before a unit; strengths such as 8.8 and numbers of standards have none. */
    private static final String POINT = "(?s).*\\d\\.\\d+ (mm|l|kg|kW|kWh|V|A|Ω|kΩ).*";

    private static List<String> texts(String language) throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("catalog"))) {
            return files.filter(file -> file.toString().endsWith(".json")
                            && !file.toString().contains("schema"))
                    .sorted()
                    .flatMap(file -> tree(file).findValues(language).stream())
                    .filter(JsonNode::isTextual)
                    .map(JsonNode::asText)
                    .toList();
        }
    }

    private static JsonNode tree(Path file) {
        try {
            return MAPPER.readTree(file.toFile());
        } catch (IOException e) {
            throw new AssertionError(file.toString(), e);
        }
    }

    @Test
    void german_and_french_numbers_have_a_comma() throws IOException {
        assertThat(texts("de")).hasSizeGreaterThan(1000).noneMatch(text -> text.matches(POINT));
        assertThat(texts("fr")).hasSameSizeAs(texts("de")).noneMatch(text -> text.matches(POINT));
        assertThat(texts("en")).as("a near miss").anyMatch(text -> text.matches(POINT));
    }

    @Test
    void french_has_a_no_break_space_before_double_signs_and_its_own_quotes() throws IOException {
        assertThat(texts("fr"))
                .noneMatch(text -> text.matches("(?s).*[^\u00a0][:;?!%»].*"))
                .noneMatch(text -> text.matches("(?s).*«[^\u00a0].*"))
                .anyMatch(text -> text.contains("\u00a0; "));
    }

    /** Below 1500 V of direct current the German for high voltage in vehicles is Hochvolt (DGUV Information 209-093). */
    @Test
    void one_thing_has_one_german_name() throws IOException {
        assertThat(texts("de"))
                .noneMatch(text -> text.contains("Hochspannung") || text.contains("Spenderfahrzeug"))
                .noneMatch(text -> text.contains("Trennstecker") && !text.contains("Service-Trennstecker"))
                .anyMatch(text -> text.contains("Hochvolt"));
    }
}
