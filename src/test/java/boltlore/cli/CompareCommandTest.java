package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("compare")
class CompareCommandTest {

    private static final Path ORDER = Path.of("catalog", "orders", "bl-1001.json");

    @TempDir
    Path folder;

    private Path changed(String from, String to) throws IOException {
        String text = Files.readString(ORDER);
        assertThat(text).contains(from);
        return Files.writeString(folder.resolve("bl-1001.json"), text.replace(from, to));
    }

    private static String words(Ran ran) {
        return ran.out().replaceAll("\\s+", " ");
    }

    @Test
    void sees_a_change_of_colour_as_other_pieces_and_no_other_change() throws IOException {
        Ran ran = Ran.boltlore("compare", ORDER, changed("\"colour\": \"green\"", "\"colour\": \"grey\""));

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(words(ran))
                .containsPattern("added PV-IM-L rev\\. A Inlet mount, late body, [^:]*[Gg]rey[^:]*: 1 each")
                .containsPattern("removed PV-IM-L rev\\. A Inlet mount, late body, [^:]*[Gg]reen[^:]*: 1 each")
                .doesNotContain("changed ");
    }

    @Test
    void sees_nothing_between_an_order_and_itself() {
        assertThat(words(Ran.boltlore("compare", ORDER, ORDER)))
                .contains("The same parts in the same quantities and finishes.")
                .contains("same price")
                .contains("same lead time");
    }

    @Test
    void tells_the_quoted_prices_and_no_cost() throws IOException {
        Path other = changed("\"charger\": \"eleven-two-way\"", "\"charger\": \"seven-two-way\"");
        Ran ran = Ran.boltlore("compare", ORDER, other);
        JsonNode json = new ObjectMapper()
                .readTree(Ran.boltlore("compare", ORDER, other, "--json").out());

        assertThat(words(ran))
                .contains("from EUR 44,415.00 to EUR ")
                .contains(" before tax")
                .doesNotContain("cost");
        assertThat(json.get("before").get("price").asText()).isEqualTo("44415.00");
        assertThat(json.get("before").get("leadDays").asText()).isEqualTo("55");
        assertThat(json.has("directCostDifference")).isFalse();
    }

    @Test
    void tells_the_difference_of_costs_where_it_is_asked_for_and_masses_in_words() throws IOException {
        Path other = Path.of("catalog", "orders", "bl-1002.json");
        Ran ran = Ran.boltlore("compare", ORDER, other, "--cost");
        JsonNode json = new ObjectMapper()
                .readTree(Ran.boltlore("compare", ORDER, other, "--cost", "--json")
                        .out());

        assertThat(words(ran))
                .containsPattern(
                        ", \\d+\\.\\d kg less; direct cost of the kit EUR [\\d,.]+ less, full cost EUR [\\d,.]+ less\\.");
        assertThat(json.get("costCurrency").asText()).isEqualTo("EUR");
        assertThat(json.get("directCostDifference").asText()).startsWith("-");
        assertThat(json.get("fullCostDifference").asText()).startsWith("-");
    }
}
