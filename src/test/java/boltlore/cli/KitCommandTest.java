package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("kit")
class KitCommandTest {

    private static final Path ORDERS = Path.of("catalog", "orders");

    @TempDir
    Path out;

    @Test
    @DisplayName("gives each demo order the findings that its table names, and sheets only where nothing stops")
    void gives_each_demo_order_its_findings() throws IOException {
        JsonNode expected =
                new ObjectMapper().readTree(ORDERS.resolve("expected.json").toFile());

        JsonNode kits = new ObjectMapper()
                .readTree(Ran.boltlore("kit", ORDERS, "--out", out, "--json").out());

        assertThat(kits).hasSize(expected.get("orders").size());
        for (JsonNode order : expected.get("orders")) {
            JsonNode kit = named(kits, order.get("order").asText());
            assertThat(kit.get("status").asText()).isEqualTo(order.get("status").asText());
            assertThat(findings(kit.get("findings")))
                    .as(order.get("order").asText())
                    .containsAll(findings(order.get("findings")));
            assertThat(Files.exists(out.resolve(order.get("order").asText())))
                    .as("sheets of " + order.get("order").asText())
                    .isEqualTo(!stopsByRules(kit.get("findings")));
        }
    }

    @Test
    @DisplayName("leaves the contents list or the packing list with the customer, and not an older one of the two")
    void leaves_one_list_of_what_is_packed() throws IOException {
        Path order = ORDERS.resolve("bl-2001.json");
        Path customer = out.resolve("BL-2001/customer");
        Ran.boltlore("kit", order, "--out", out);
        assertThat(customer.resolve("contents.xlsx")).exists();
        Ran.boltlore("kit", "--all", order, "--out", out);
        assertThat(customer.resolve("contents.xlsx")).doesNotExist();
        assertThat(customer.resolve("packing-list.xlsx")).exists();
        Ran.boltlore("kit", order, "--out", out);
        assertThat(customer.resolve("contents.xlsx")).exists();
        assertThat(customer.resolve("packing-list.xlsx")).doesNotExist();
        assertThat(customer.resolve("dangerous-goods.xlsx"))
                .as("what no other sheet replaces")
                .exists();
    }

    @Test
    @DisplayName("changed by hand, keeps the packing list")
    void keeps_a_packing_list_that_somebody_wrote_in() throws IOException {
        Path order = ORDERS.resolve("bl-2001.json");
        Path list = out.resolve("BL-2001/customer/packing-list.xlsx");
        Ran.boltlore("kit", "--all", order, "--out", out);
        Files.writeString(list, "signed");
        Ran.boltlore("kit", order, "--out", out);
        assertThat(list).hasContent("signed");
    }

    @Test
    @DisplayName("writes the same bytes on every run")
    void writes_the_same_bytes_on_every_run() throws IOException {
        Path order = ORDERS.resolve("bl-1010.json");
        Ran.boltlore("kit", order, "--out", out.resolve("one"));
        Ran.boltlore("kit", order, "--out", out.resolve("other"));

        List<Path> files = filesIn(out.resolve("one"));
        assertThat(files).isNotEmpty();
        for (Path file : files) {
            assertThat(out.resolve("other").resolve(out.resolve("one").relativize(file)))
                    .hasSameBinaryContentAs(file);
        }
    }

    @Test
    @DisplayName("writes a workbook, tables as CSV and tables as JSON for each room")
    void writes_each_rooms_sheets() {
        Ran ran = Ran.boltlore("kit", ORDERS.resolve("bl-1001.json"), "--out", out);

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(out.resolve("BL-1001"))
                .isDirectoryContaining("glob:**/bill.xlsx")
                .isDirectoryContaining("glob:**/customer")
                .isDirectoryContaining("glob:**/picking-list.xlsx")
                .isDirectoryContaining("glob:**/powder-coat-batch.xlsx")
                .isDirectoryContaining("glob:**/csv")
                .isDirectoryContaining("glob:**/json")
                .isDirectoryNotContaining("glob:**/job-cards.xlsx")
                .isDirectoryNotContaining("glob:**/cutting-list.xlsx");
    }

    @Test
    @DisplayName("writes job cards where they are asked for, and no cost stands on them")
    void writes_job_cards_where_they_are_asked_for() {
        Ran ran = Ran.boltlore("kit", "--job-cards", ORDERS.resolve("bl-1001.json"), "--out", out);

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(out.resolve("BL-1001/job-cards.xlsx")).isRegularFile();
        assertThat(out.resolve("BL-1001/csv/job-cards-steps.csv"))
                .content()
                .contains("saw")
                .doesNotContain("EUR");
    }

    @Test
    @DisplayName("writes the sheets of the other trades where all are asked for")
    void writes_the_sheets_of_all_trades() {
        Ran ran = Ran.boltlore("kit", "--all", ORDERS.resolve("bl-1001.json"), "--out", out);

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(ran.out()).doesNotContain("must be mended");
        assertThat(out.resolve("BL-1001"))
                .isDirectoryContaining("glob:**/bill.xlsx")
                .isDirectoryContaining("glob:**/cutting-list.xlsx")
                .isDirectoryContaining("glob:**/weight-statement.xlsx")
                .isDirectoryContaining("glob:**/charging-and-high-voltage.xlsx")
                .isDirectoryContaining("glob:**/fixings.xlsx")
                .isDirectoryContaining("glob:**/end-of-line-test.xlsx")
                .isDirectoryContaining("glob:**/labels-and-manual.xlsx")
                .isDirectoryContaining("glob:**/shipping-papers.xlsx");
        assertThat(out.resolve("BL-1001/customer")).isDirectoryContaining("glob:**/quotation.xlsx");
        assertThat(out.resolve("BL-1001/workshop")).isDirectoryContaining("glob:**/cost-statement.xlsx");
    }

    @Test
    @DisplayName("says what must be mended where the sheets of a trade find a limit exceeded")
    void says_what_another_trade_finds() throws IOException {
        Path catalog =
                ChangedCatalogue.in(out, "families/pannier-van/family.json", "\"grossKg\": 2400", "\"grossKg\": 1600");

        Ran ran = Ran.boltlore(
                "kit", "--all", ORDERS.resolve("bl-1001.json"), "--out", out.resolve("sheets"), "--catalogue", catalog);

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.STOPPED);
        assertThat(ran.out()).contains("more than its limit of 1600 kg");
        assertThat(out.resolve("sheets/BL-1001")).isDirectoryContaining("glob:**/weight-statement.xlsx");
    }

    @Test
    @DisplayName("keeps its sheets where another command writes into the same folder")
    void keeps_its_own_sheets() throws IOException {
        Path made = out.resolve("BL-1001");
        Ran.boltlore("kit", "catalog/orders/bl-1001.json", "--out", out);
        byte[] batch = Files.readAllBytes(made.resolve("powder-coat-batch.xlsx"));

        Ran coat = Ran.boltlore("coat", "catalog/orders/bl-1002.json", "--out", made);

        assertThat(made.resolve("powder-coat-batch.xlsx")).hasBinaryContent(batch);
        assertThat(made.resolve("powder-coat-batch.new.xlsx")).exists();
        assertThat(coat.err().replaceAll("\\s+", " "))
                .contains(
                        "powder-coat-batch.xlsx was written by 'kit' of BL-1001: it stays as it is, and what is new is"
                                + " powder-coat-batch.new.xlsx beside it.");
    }

    @Test
    @DisplayName("refuses an order whose vehicle is still to be built")
    void refuses_a_vehicle_of_the_future() throws IOException {
        String text = Files.readString(Path.of("catalog/orders/bl-1001.json"));
        Path order = Files.writeString(
                out.resolve("later.json"),
                text.replaceFirst("\"donorBuilt\": \"[^\"]*\"", "\"donorBuilt\": \"2190-05\"")
                        .replaceFirst("\"placed\": \"[^\"]*\",", ""));

        Ran kit = Ran.boltlore("kit", order, "--out", out);

        assertThat(kit.exit()).isEqualTo(Exit.FAULTS);
        assertThat(kit.err().replaceAll("\\s+", " "))
                .contains("/donorBuilt: found built 2190-05; expected a day not after today");
    }

    @Test
    @DisplayName("writes no sheet of an order in conflict, and says which limits it breaks")
    void writes_no_sheet_of_a_conflict() {
        Ran ran = Ran.boltlore("kit", ORDERS.resolve("bl-1006.json"), "--out", out);

        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(ran.out()).contains("Conflict: ").contains("No sheets written");
        assertThat(out).isEmptyDirectory();
    }

    @Test
    @DisplayName("tells of sheets that stay from when the order was another: nobody is to work by them unwarned")
    void tells_of_sheets_of_the_order_as_it_was() throws IOException {
        Path order = out.resolve("order.json");
        Path sheets = out.resolve("sheets");
        String text = Files.readString(ORDERS.resolve("bl-1001.json")).replace("../schema", "schema");
        Files.writeString(order, text);
        Ran.boltlore("kit", "--all", order, "--out", sheets);

        assertThat(Ran.boltlore("kit", order, "--out", sheets).err()).isEmpty();

        Files.writeString(
                order, text.replaceFirst("\"revision\"|\"customer\": \"[^\"]*\"", "\"customer\": \"Another\""));
        assertThat(Ran.boltlore("kit", order, "--out", sheets).err().replaceAll("\\s+", " "))
                .contains("sheets of the order as it was at an earlier run stay", "braking.xlsx");

        Files.writeString(order, text.replaceFirst("\"body-era\": \"[a-z]*\"", "\"body-era\": \"early\""));
        Ran stopped = Ran.boltlore("kit", order, "--out", sheets);
        assertThat(stopped.exit()).isNotEqualTo(Exit.OK);
        assertThat(stopped.err().replaceAll("\\s+", " ")).contains("bill.xlsx");
    }

    @Test
    @DisplayName("takes usual values on request only, and tells each")
    void takes_usual_values_on_request() {
        Ran asked = Ran.boltlore("kit", ORDERS.resolve("bl-1007.json"), "--defaults", "--out", out);
        Ran silent = Ran.boltlore("kit", ORDERS.resolve("bl-1007.json"), "--out", out);

        assertThat(asked.out()).contains("Default applied");
        assertThat(silent.out()).doesNotContain("Default applied");
    }

    @Test
    @DisplayName("prints the engineer's notes of a part on no sheet; parts shows them where it is asked for")
    void prints_no_notes() throws IOException {
        String notes = "of bead and";
        assertThat(Ran.boltlore("parts", "PV-CR-RA-L").out()).containsIgnoringWhitespaces("Notes: Times from", notes);
        assertThat(Ran.boltlore("parts", "PV-CR-RA-L", "--json").out()).contains("\"notes\": \"Times from");
        assertThat(Ran.boltlore("parts").out()).doesNotContain("Notes: ");

        Ran.boltlore("kit", ORDERS.resolve("bl-1001.json"), "--all", "--out", out);
        List<Path> data = filesIn(out).stream()
                .filter(file -> file.toString().endsWith(".json"))
                .toList();
        assertThat(data).hasSizeGreaterThan(15);
        for (Path file : data) {
            assertThat(Files.readString(file)).doesNotContain(notes);
        }
    }

    @Test
    @DisplayName("names the sure parts of an order that is not settled, and writes no sheets")
    void names_the_sure_parts() {
        Ran ran = Ran.boltlore("kit", "--certain", ORDERS.resolve("bl-1007.json"), "--out", out);

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        assertThat(ran.out()).contains("AC-COMP");
        assertThat(out).isEmptyDirectory();
    }

    @Test
    @DisplayName("refuses two files of one order in one run, and still writes the first")
    void refuses_one_order_twice() throws IOException {
        Path copy = Files.copy(ORDERS.resolve("bl-1001.json"), out.resolve("zz-copy.json"));

        Ran ran = Ran.boltlore("kit", ORDERS.resolve("bl-1001.json"), copy, "--out", out.resolve("exports"));

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("'BL-1001', which is also in");
        assertThat(out.resolve("exports/BL-1001")).isDirectory();
    }

    @Test
    @DisplayName("tells each waiver that speaks of nothing that the rules or a trade found, and no other")
    void tells_waivers_without_finding() throws IOException {
        String by = "\"who\": \"Rowan Dell\", \"when\": \"2026-07-08\", \"why\": \"Looked at.\"}";
        Path order = out.resolve("waiving.json");
        Files.writeString(
                order,
                Files.readString(ORDERS.resolve("bl-1010.json"))
                        .replace(
                                "\"waived\": [",
                                "\"waived\": [{\"finding\": \"inlet of another market\", \"subject\": \"type-2\", " + by
                                        + ", {\"finding\": \"no mask in that size\", " + by
                                        + ", {\"finding\": \"one piece heaviest\", \"subject\": \"crate 2\", "
                                        + by
                                        + ", {\"finding\": \"one piece heaviest\", \"subject\": \"crate 22\", " + by
                                        + ", {\"finding\": \"sizes by mass\", " + by + ","));

        Ran ran = Ran.boltlore("kit", order, "--out", out.resolve("sheets"), "--json");

        assertThat(ran.exit()).as(ran.toString()).isEqualTo(Exit.OK);
        JsonNode findings = new ObjectMapper().readTree(ran.out()).get(0).get("findings");
        assertThat(findings(findings))
                .filteredOn(finding -> finding.startsWith("waiver without finding "))
                .containsExactlyInAnyOrder(
                        "waiver without finding inlet of another market: type-2",
                        "waiver without finding no mask in that size",
                        "waiver without finding one piece heaviest: crate 22");
        assertThat(findings.findValuesAsText("sentence"))
                .contains("The order waives 'no mask in that size', but the kit has no such finding.");
        assertThat(findings)
                .anyMatch(finding -> finding.path("rule").asText().equals("An unused bracket is kept on purpose"));
    }

    /** What a trade finds is told and stops the exit, but whoever mends it needs the sheets. */
    private static boolean stopsByRules(JsonNode findings) {
        for (JsonNode finding : findings) {
            if (finding.get("by").asText().equals("kit")
                    && finding.get("severity").asText().equals("stop")) {
                return true;
            }
        }
        return false;
    }

    private static JsonNode named(JsonNode kits, String name) {
        for (JsonNode kit : kits) {
            if (kit.get("order").asText().equals(name)) {
                return kit;
            }
        }
        throw new AssertionError("No order " + name + " among the kits");
    }

    private static List<String> findings(JsonNode findings) {
        List<String> all = new ArrayList<>();
        findings.forEach(finding -> {
            if (finding.path("by").asText("kit").equals("kit")) {
                String kind = finding.has("kind") ? "kind" : "finding";
                all.add(finding.get(kind).asText() + " "
                        + finding.get("subject").asText());
            }
        });
        return all;
    }

    private static List<Path> filesIn(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }
}
