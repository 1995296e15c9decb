package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("What all owed orders are cut from, and what waits for its coat, with two orders in the book")
class BarsInBookTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String TUBE = "s235-tube-40x40x3";
    private static final String EARLY = "BL-1001";
    private static final String LATE = "BL-1003";

    @TempDir
    private Path folder;

    private DeskAt desk;

    @BeforeEach
    void confirmed() {
        desk = DeskAt.file(folder);
        confirm(EARLY, "2027-06-30");
    }

    private void confirm(String order, String due) {
        desk.done("order", "draft", "catalog/orders/" + order.toLowerCase(java.util.Locale.ROOT) + ".json");
        desk.done("order", "quote", order);
        desk.done("order", "confirm", order, "--due", due);
    }

    private JsonNode json(Object... words) throws IOException {
        Ran ran = desk.run(
                java.util.stream.Stream.concat(java.util.Arrays.stream(words), java.util.stream.Stream.of("--json"))
                        .toArray());
        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        return MAPPER.readTree(ran.out());
    }

    private Map<String, JsonNode> bars() throws IOException {
        Map<String, JsonNode> bars = new TreeMap<>();
        json("stock", "bars").forEach(each -> bars.put(each.get("material").asText(), each));
        return bars;
    }

    /** As many as the pieces' lengths ask for at the least, by the cutting list of the order file, which knows no book. */
    @Test
    @DisplayName("are bars of each material that its pieces are cut from, and no fewer than their lengths need")
    void lengths() throws IOException {
        Path out = folder.resolve("cut");
        Ran.boltlore("cut", "catalog/orders/bl-1001.json", "--out", out.toString());
        Map<String, BigDecimal> lengths = new TreeMap<>();
        Map<String, Integer> pieces = new TreeMap<>();
        List<String> rows = Files.readAllLines(out.resolve("csv/cutting-list-pieces.csv"));
        List<String> heads = List.of(rows.get(0).replace("\uFEFF", "").split(",", -1));
        for (String row : rows.subList(1, rows.size())) {
            // The name may hold a comma; what is read stands before it.
            String[] cells = row.split(",", -1);
            String material = cells[heads.indexOf("material")];
            lengths.merge(material, new BigDecimal(cells[heads.indexOf("length (mm)")]), BigDecimal::add);
            pieces.merge(material, 1, Integer::sum);
        }

        Map<String, JsonNode> bars = bars();
        assertThat(bars.keySet()).isEqualTo(lengths.keySet());
        bars.forEach((material, need) -> {
            assertThat(need.get("pieces").asInt()).as(material).isEqualTo(pieces.get(material));
            BigDecimal bought = BigDecimal.ZERO;
            for (Map.Entry<String, JsonNode> each : need.get("toBuy").properties()) {
                bought = bought.add(
                        new BigDecimal(each.getKey()).multiply(each.getValue().decimalValue()));
            }
            assertThat(bought.setScale(0, RoundingMode.HALF_UP))
                    .as(material)
                    .isGreaterThanOrEqualTo(lengths.get(material));
        });
    }

    @Test
    @DisplayName("are taken from the rack first, and asked for no more once they are cut")
    void rack() throws IOException {
        assertThat(bars().get(TUBE).get("fromRack").asInt()).isZero();
        assertThat(desk.refused("rack", "add", "R-1", TUBE, "99999999")).contains("the longest bar that is bought");
        assertThat(desk.refused("rack", "add", "R-1", TUBE, "1.5")).contains("from where rests are kept");
        desk.done("rack", "add", "R-1", TUBE, "6000", "--heat", "H-1");
        assertThat(bars().get(TUBE).get("fromRack").asInt()).isEqualTo(1);
        assertThat(bars().get(TUBE).get("toBuy")).isNotEmpty();
        desk.done("rack", "add", "R-2", TUBE, "6000", "--heat", "H-1");
        assertThat(bars().get(TUBE).get("toBuy")).isEmpty();
        assertThat(desk.done("stock", "bars", "--material", TUBE, "--short")).contains("No bar is to be cut.");

        desk.done("rack", "cut", EARLY, "--done");
        assertThat(bars()).isEmpty();
        assertThat(desk.refused("rack", "cut", EARLY, "--done")).contains("was cut on");
        confirm(LATE, "2027-06-01");
        assertThat(bars().values())
                .isNotEmpty()
                .allSatisfy(need -> assertThat(need.get("orders"))
                        .hasSize(1)
                        .allMatch(order -> order.asText().equals(LATE)));
    }

    @Test
    @DisplayName(
            "a late order that is due before the others moves ahead of them in the queue, and not ahead of what hangs")
    void ahead() throws IOException {
        String hanging = "";
        for (JsonNode queued : json("coating", "queue", EARLY)) {
            hanging = queued.get("finish").asText().equals("green-gloss")
                    ? queued.get("piece").asText()
                    : hanging;
        }
        assertThat(desk.refused("coating", "hang", hanging, "--load", "load-1")).contains("no bare ");
        desk.done("coating", "hang", hanging, "--load", "load-1", "--reason", "made before the book began");
        confirm(LATE, "2027-06-01");
        desk.done("coating", "queue", LATE);

        Map<String, String> firstOfFinish = new TreeMap<>();
        for (JsonNode piece : json("coating", "list", "--state", "waiting")) {
            firstOfFinish.putIfAbsent(
                    piece.get("finish").asText(), piece.get("order").asText());
        }
        assertThat(firstOfFinish.values()).contains(LATE);
        for (JsonNode piece : json("coating", "list", "--order", LATE)) {
            assertThat(firstOfFinish.get(piece.get("finish").asText())).isEqualTo(LATE);
        }
        assertThat(json("coating", "list", "--state", "hung").findValuesAsText("piece"))
                .containsExactly(hanging);
    }
}
