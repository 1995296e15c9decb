package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.trades.Trade;
import boltlore.trades.orders.Trades;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Nothing that any trade finds of an order stays hidden")
class KitFindingsTest {

    private static final Path ORDERS = Path.of("catalog", "orders");

    @TempDir
    private Path out;

    @Test
    @DisplayName("kit tells, of every demo order, all that the trades' own commands tell, plain and with all sheets")
    void the_union_of_all_trades() throws IOException {
        Map<String, List<String>> kits = findings("kit", "--out", out.resolve("kit"));
        Map<String, List<String>> all = findings("kit", "--all", "--out", out.resolve("all"));
        Map<String, List<String>> union = new TreeMap<>();
        kits.forEach((order, found) -> union.put(
                order,
                new ArrayList<>(
                        found.stream().filter(one -> one.startsWith("kit ")).toList())));
        for (Trade trade : Trades.ALL) {
            each(trade.name()).forEach((order, found) -> union.get(order).addAll(own(found)));
        }

        assertThat(kits).hasSize(17).isEqualTo(all);
        kits.forEach((order, found) ->
                assertThat(wherever(found)).as(order).containsExactlyInAnyOrderElementsOf(wherever(union.get(order))));
    }

    /** A trade repeats why it makes nothing of an order that stops. */
    private static List<String> own(List<String> found) {
        return found.stream().filter(one -> !one.startsWith("kit ")).toList();
    }

    /** Where it goes is a note in the kit, and to be checked once it ships. */
    private static List<String> wherever(List<String> found) {
        return found.stream()
                .filter(one -> !one.startsWith("ship destination not given"))
                .toList();
    }

    @Test
    @DisplayName(
            "a trade's own sheet says of an accepted finding what the kit says: who judged it once is not asked again")
    void accepted_on_the_sheet_too() throws IOException {
        Ran ran = boltlore("fixings", ORDERS.resolve("bl-2001.json"), "--json", "--out", out);
        JsonNode told = new ObjectMapper().readTree(ran.out());
        List<String> sheet = new ArrayList<>();
        told.findValues("reports")
                .forEach(reports -> reports.forEach(report -> report.get("findings")
                        .forEach(each -> sheet.add(each.get("severity").asText()))));

        assertThat(ran.out()).contains("Accepted for this family");
        assertThat(sheet).isNotEmpty().containsOnly("note");
    }

    @Test
    @DisplayName("the terminal and the bill hold each sentence that JSON holds, and so does the exit code")
    void everywhere() throws IOException {
        Path order = ORDERS.resolve("bl-1001.json");
        List<JsonNode> found = new ArrayList<>();
        new ObjectMapper()
                .readTree(boltlore("kit", order, "--json", "--out", out).out())
                .get(0)
                .get("findings")
                .forEach(found::add);
        Ran told = boltlore("kit", order, "--out", out.resolve("again"));
        String bill = bill(out.resolve("again/BL-1001/bill.xlsx"));
        assertThat(found).isNotEmpty().allSatisfy(finding -> {
            assertThat(told.out().replaceAll("\\s+", " "))
                    .contains(finding.get("sentence").asText());
            assertThat(bill).contains(finding.get("sentence").asText());
        });
        boolean stops = found.stream()
                .anyMatch(finding -> finding.get("severity").asText().equals("stop"));
        assertThat(told.exit()).isEqualTo(stops ? Exit.STOPPED : Exit.OK);
    }

    private static String bill(Path workbook) throws IOException {
        try (ReadableWorkbook opened = new ReadableWorkbook(Files.newInputStream(workbook));
                Stream<org.dhatim.fastexcel.reader.Row> rows =
                        opened.findSheet("Findings").orElseThrow().openStream()) {
            StringBuilder text = new StringBuilder();
            rows.forEach(row -> row.forEach(
                    cell -> text.append(cell == null ? "" : cell.getText()).append('\n')));
            return text.toString();
        }
    }

    /** What a trade tells of each order: of all at once, or one by one where it works on, or judges, all together. */
    private Map<String, List<String>> each(String trade) throws IOException {
        Map<String, List<String>> all = findings(trade, "--out", out.resolve(trade));
        if (!all.containsKey("") && !trade.equals("ship")) {
            return all;
        }
        Map<String, List<String>> alone = new TreeMap<>();
        for (Path order : orders()) {
            alone.putAll(findings(List.of(order), trade, "--out", out.resolve(trade)));
        }
        return alone;
    }

    private static List<Path> orders() throws IOException {
        try (Stream<Path> files = Files.list(ORDERS)) {
            return files.filter(file -> file.getFileName().toString().startsWith("bl-"))
                    .sorted()
                    .toList();
        }
    }

    private static Map<String, List<String>> findings(Object... arguments) throws IOException {
        return findings(orders(), arguments);
    }

    /** By order, each as 'charging load above fuse: battery: the sentence'. */
    private static Map<String, List<String>> findings(List<Path> orders, Object... arguments) throws IOException {
        List<Object> all = new ArrayList<>(List.of(arguments));
        all.add("--json");
        all.addAll(orders);
        JsonNode answer = new ObjectMapper().readTree(boltlore(all.toArray()).out());
        Map<String, List<String>> found = new TreeMap<>();
        (answer.isArray() ? answer : answer.path("orders")).forEach(order -> {
            List<String> some = found.computeIfAbsent(order.path("order").asText(""), name -> new ArrayList<>());
            order.get("findings")
                    .forEach(finding -> some.add(finding.get("by").asText() + " "
                            + finding.get("kind").asText() + ": "
                            + finding.get("subject").asText() + ": "
                            + finding.get("sentence").asText()));
        });
        return found;
    }
}
