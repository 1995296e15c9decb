package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("picking")
class PickingCommandTest {

    private static final Path ORDERS = Path.of("catalog", "orders");
    private static final Path UNDECIDED = ORDERS.resolve("bl-1002.json");
    private static final Path DECIDED = ORDERS.resolve("bl-1003.json");
    private static final Path STOPPED = ORDERS.resolve("bl-1006.json");

    @TempDir
    Path out;

    @Test
    @DisplayName("writes the list that kit writes, byte for byte, in a folder for each order")
    void same_list() {
        assertThat(boltlore("picking", UNDECIDED, DECIDED, "--out", out.resolve("alone"))
                        .exit())
                .isEqualTo(Exit.OK);
        boltlore("kit", UNDECIDED, "--out", out.resolve("kit"));

        assertThat(out.resolve("alone/BL-1002/picking-list.xlsx"))
                .hasSameBinaryContentAs(out.resolve("kit/BL-1002/picking-list.xlsx"));
        assertThat(out.resolve("alone/BL-1003")).isDirectoryContaining("glob:**/picking-list.xlsx");
        assertThat(out.resolve("alone/BL-1003/csv")).isDirectoryContaining("glob:**/picking-list-bags.csv");
    }

    @Test
    @DisplayName("finds each bracket that somebody must decide about, and nothing where all is decided")
    void undecided() throws IOException {
        JsonNode orders = new ObjectMapper()
                .readTree(boltlore("picking", UNDECIDED, DECIDED, "--json", "--out", out)
                        .out())
                .get("orders");

        assertThat(orders.get(0).get("findings")).isNotEmpty().allSatisfy(finding -> {
            assertThat(finding.get("by").asText()).isEqualTo("picking");
            assertThat(finding.get("kind").asText()).isEqualTo("lines on hold");
            assertThat(finding.get("severity").asText()).isEqualTo("check");
        });
        JsonNode tables = orders.get(0).get("reports").get(0).get("tables");
        assertThat(tables.get("bins")).hasSizeGreaterThan(100);
        assertThat(tables.get("on-hold")).isNotEmpty();
        assertThat(tables.get("bags").findValuesAsText("stage")).contains("front", "cabin");
        assertThat(orders.get(1).get("findings")).isEmpty();
    }

    @Test
    @DisplayName("tells an order that something stops, and picks the others")
    void stopped() {
        Ran ran = boltlore("picking", STOPPED, DECIDED, "--out", out);

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.STOPPED);
        assertThat(ran.out()).contains("BL-1006").contains("1 sheet written to");
        assertThat(out.resolve("BL-1006")).doesNotExist();
    }
}
