package boltlore.trades.shipping;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Tracked;
import boltlore.report.Cell;
import boltlore.report.Report;
import boltlore.report.Row;
import boltlore.report.Table;
import boltlore.report.text.TextWriter;
import boltlore.sketch.PartSketch;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The packing list and the transport document, as a receiver and an inspector read them")
class PackedPartsTest {

    private static Report paper(Shipment shipment, String file) {
        return ShippingReport.forCustomer(shipment, Map.of()).stream()
                .filter(report -> report.file().equals(file))
                .findFirst()
                .orElseThrow();
    }

    private static Table contents(Shipment shipment) {
        return table(paper(shipment, "packing-list"), "crate-contents");
    }

    private static List<String> column(Table table, String key) {
        return table.rows().stream()
                .filter(Row::isPlain)
                .map(row -> ((Cell.Words) row.cells().get(table.column(key))).text())
                .toList();
    }

    @Test
    void say_which_part_lies_in_which_crate_and_how_many() {
        Shipment shipment = new ShippedKit().part("A", "5", 3).part("B", "7", 1).shipment();
        Table table = contents(shipment);
        Stream<String> packed = shipment.crates().stream()
                .flatMap(crate -> crate.packed().stream())
                .map(each -> each.goods().name());
        assertThat(column(table, "part"))
                .containsExactlyElementsOf(packed.toList())
                .contains("A", "B");
        assertThat(column(table, "count").get(column(table, "part").indexOf("A")))
                .isEqualTo("3");
        assertThat(table.abreast()).isEqualTo(2);
    }

    @Test
    void name_the_masses_of_each_crate_over_its_parts() {
        Shipment shipment = new ShippedKit().part("A", "5", 3).shipment();
        assertThat(contents(shipment).rows().get(0).words())
                .startsWith("Crate 1 of 1")
                .contains("Net 15 kg")
                .contains("Gross ");
    }

    @Test
    void leave_a_box_for_the_number_of_each_piece_that_has_one() {
        Shipment shipment = new ShippedKit()
                .part(PartSketch.bought("BM").tracked(Tracked.SERIAL), "", 3)
                .part(PartSketch.bought("MO").tracked(Tracked.SERIAL), "", 1)
                .part(PartSketch.bought("HO").tracked(Tracked.LOT), "", 3)
                .shipment();
        Report list = paper(shipment, "packing-list");
        assertThat(column(table(list, "serials"), "piece")).containsExactly("1, 2 of 3", "3 of 3");
        assertThat(table(list, "serials").rows().get(0).cells())
                .as("pieces of one part may lie in several crates")
                .contains(Cell.of(new BigDecimal("1")));
        assertThat(column(table(list, "numbers"), "part"))
                .as("a lot is the workshop's")
                .containsExactly("MO");
        assertThat(table(list, "numbers").rows().get(0).cells())
                .as("a single piece lies in a crate too")
                .contains(Cell.of(new BigDecimal("1")));
    }

    private static Table table(Report report, String name) {
        return report.tables()
                .filter(table -> table.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void say_how_many_of_a_bag_are_spares() {
        Shipment shipment = new ShippedKit()
                .part(PartSketch.bolt("FX", "M8", null), "small", 12)
                .part("A", "5", 12)
                .shipment();
        Table table = contents(shipment);
        List<String> parts = column(table, "part");
        assertThat(column(table, "count").get(parts.indexOf("FX"))).isEqualTo("12 + 1");
        assertThat(column(table, "count").get(parts.indexOf("A"))).isEqualTo("12");
    }

    @Test
    void name_the_crate_over_each_bag_in_it() {
        Shipment shipment = new ShippedKit()
                .part(PartSketch.bought("A").massKg("5"), "", 1)
                .part(PartSketch.bought("B").massKg("5"), "small", 1)
                .shipment();
        assertThat(contents(shipment).rows().stream()
                        .filter(row -> !row.isPlain())
                        .map(Row::words))
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("Crate 1 of 1").doesNotContain("small"),
                        then -> assertThat(then).startsWith("Crate 1 · ").endsWith("small"));
    }

    /** ADR 5.4.1.1.1 (f), note 1, and 1.1.3.6.3: mass times 3 for transport category 2; 9A is in column (5) of table A, both from memory. */
    @Test
    void give_quantity_and_calculated_value_of_each_transport_category_and_the_labels() {
        Shipment shipment = new ShippedKit().battery("BM", "20", "5000").shipment();
        String text =
                new TextWriter(200).text(paper(shipment, "dangerous-goods")).replaceAll("[\\s|]+", " ");
        assertThat(text)
                .contains("Label on each package No. 9A")
                .contains("UN 3480 LITHIUM ION BATTERIES, 9, (E)")
                .contains("Transport category 2 20 kg, calculated value 60")
                .contains("All categories, of this order 60, not above 1000")
                .contains("ADR 2025");
    }

    @Test
    void give_no_category_where_they_travel_by_sea() {
        Shipment shipment =
                new ShippedKit().battery("BM", "20", "5000").by(By.SEA).shipment();
        assertThat(new TextWriter(200).text(paper(shipment, "dangerous-goods"))).doesNotContain("Transport category");
    }
}
