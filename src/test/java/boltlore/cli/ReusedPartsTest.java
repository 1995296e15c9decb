package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An order of the demo whose propshaft stays the vehicle's own, and one that takes old drive units back. */
@DisplayName("A kit")
class ReusedPartsTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<String> OF_SUPPLIED_PARTS = List.of(
            "cost",
            "offers",
            "massKg",
            "supplier",
            "orderCode",
            "packOf",
            "minimumOrder",
            "leadDays",
            "scrapPercent",
            "bin",
            "customs",
            "coat",
            "tracked");

    @TempDir
    private Path folder;

    private JsonNode before;

    @BeforeEach
    void asItIs() throws IOException {
        before = sheets("catalog", "before").get("bill");
    }

    /** All sheets of the order by name. */
    private ObjectNode sheets(Object catalogue, String out) throws IOException {
        Ran ran = boltlore(
                "kit", "catalog/orders/bl-1001.json", "--catalogue", catalogue, "--all", "--out", folder.resolve(out));
        assertThat(ran.err()).isEmpty();
        ObjectNode all = JSON.createObjectNode();
        try (Stream<Path> files = Files.walk(folder.resolve(out))) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".json")).toList()) {
                all.set(file.getFileName().toString().replace(".json", ""), JSON.readTree(file.toFile()));
            }
        }
        return all;
    }

    /** The part that the demo's order has of those whose number begins so. */
    private String partOf(String begin) {
        return rows(before, "bill").stream()
                .map(row -> row.path("part").asText())
                .filter(number -> number.startsWith(begin))
                .findFirst()
                .orElseThrow();
    }

    private Path with(String part, Consumer<ObjectNode> change) throws IOException {
        Path catalogue = folder.resolve("catalog");
        try (Stream<Path> all = Files.walk(Path.of("catalog"))) {
            for (Path each : all.toList()) {
                Files.copy(each, catalogue.resolve(Path.of("catalog").relativize(each)));
            }
        }
        try (Stream<Path> files = Files.list(catalogue.resolve("parts"))) {
            for (Path file : files.toList()) {
                JsonNode tree = JSON.readTree(file.toFile());
                for (JsonNode each : tree.get("parts")) {
                    if (each.get("part").asText().equals(part)) {
                        change.accept((ObjectNode) each);
                    }
                }
                Files.writeString(file, tree.toString());
            }
        }
        return catalogue;
    }

    private static List<JsonNode> rows(JsonNode sheet, String table) {
        List<JsonNode> rows = new ArrayList<>();
        sheet.path("tables").path(table).forEach(rows::add);
        return rows;
    }

    private static List<String> parts(JsonNode sheet, String table) {
        return rows(sheet, table).stream().map(row -> row.path("part").asText()).toList();
    }

    private static BigDecimal fact(JsonNode sheet, String name) {
        return sheet.path("facts").path(name).path("value").decimalValue();
    }

    @Test
    void fits_the_vehicles_own_propshaft_again_and_neither_buys_picks_weighs_nor_ships_one() throws IOException {
        String shaft = partOf("PV-PS-");
        JsonNode was = rows(before, "bill").stream()
                .filter(row -> row.path("part").asText().equals(shaft))
                .findFirst()
                .orElseThrow();
        JsonNode after = sheets(
                with(shaft, part -> {
                    part.remove(OF_SUPPLIED_PARTS);
                    part.put("source", "donor").put("inspect", "Joints without play, tube without dents. Else: new.");
                }),
                "after");

        JsonNode bill = after.get("bill");
        assertThat(fact(before, "bill.kit.extended").subtract(fact(bill, "bill.kit.extended")))
                .isEqualByComparingTo(was.get("extended").decimalValue());
        assertThat(fact(before, "bill.kit.massExtended").subtract(fact(bill, "bill.kit.massExtended")))
                .isEqualByComparingTo(was.get("massExtended").decimalValue());
        assertThat(parts(bill, "bill")).contains(shaft);
        assertThat(parts(before, "buy")).contains(shaft);
        assertThat(parts(bill, "buy")).doesNotContain(shaft);
        assertThat(parts(after.get("picking-list"), "bins")).doesNotContain(shaft);
        assertThat(parts(after.get("picking-list"), "bags")).doesNotContain(shaft);
        assertThat(parts(after.get("picking-list"), "reused")).containsExactly(shaft);
        assertThat(parts(after.get("packing-list"), "crate-contents")).doesNotContain(shaft);
        assertThat(rows(after.get("packing-list"), "reused")
                        .get(0)
                        .path("inspect")
                        .asText())
                .isEqualTo("Joints without play, tube without dents. Else: new.");
        assertThat(parts(after.get("shipping-papers"), "packing")).doesNotContain(shaft);
        assertThat(after.get("fixings").toString()).contains(shaft);
    }

    @Test
    void credits_an_old_unit_that_comes_back_outside_cost_and_price() throws IOException {
        JsonNode quoted = sheets("catalog", "quoted").get("quotation");
        String drive = partOf("DU-");
        JsonNode after = sheets(with(drive, part -> part.put("coreCredit", "350.00")), "after");

        JsonNode quotation = after.get("quotation");
        assertThat(fact(quotation, "price.total.amount")).isEqualByComparingTo(fact(quoted, "price.total.amount"));
        assertThat(fact(after.get("bill"), "full")).isEqualByComparingTo(fact(before, "full"));
        assertThat(rows(quoted, "core-credits")).isEmpty();
        assertThat(rows(quotation, "core-credits")).singleElement().satisfies(row -> {
            assertThat(row.path("part").asText()).isEqualTo(drive);
            assertThat(row.path("credit").decimalValue()).isEqualByComparingTo("350.00");
        });
        assertThat(fact(quotation, "core-credits.credits.credit")).isEqualByComparingTo("350.00");
        assertThat(fact(after.get("cost-statement"), "core-credits")).isEqualByComparingTo("350.00");
    }
}
