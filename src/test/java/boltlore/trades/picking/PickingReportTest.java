package boltlore.trades.picking;

import static boltlore.trades.picking.SampleStores.kit;
import static boltlore.trades.picking.SampleStores.withAir;
import static boltlore.trades.picking.SampleStores.withoutAir;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.demo.Demo;
import boltlore.faults.Outcome;
import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import boltlore.report.Approved;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.Printed;
import boltlore.report.Report;
import boltlore.report.Row;
import boltlore.report.Table;
import boltlore.report.text.TextWriter;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.OrderSketch;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class PickingReportTest {

    private static final int WIDE = 170;

    private static final Extra SPARE_KEY = new Extra(
            new PartNumber("TL-KEY"), "", new BigDecimal("2"), "each", null, null, true, "Their own key fits the box.");

    private static final Extra TOUCH_UP = new Extra(
            null, "Touch-up paint", new BigDecimal("0.25"), "l", new BigDecimal("4"), null, false, "Asked for.");

    @Test
    void reads_as_stores_approved_it() {
        Approved.check(
                "trades/picking/picking-list",
                new TextWriter(WIDE).text(sheet(withoutAir().extra(SPARE_KEY, TOUCH_UP))));
    }

    @Test
    void marks_a_piece_that_is_cut_to_one_vehicle() {
        String picked = new TextWriter(WIDE)
                .text(((Outcome.Sound<List<TradeResult>>)
                                new PickingTrade().work(List.of(Demo.kit("bl-2001")), Given.NONE))
                        .value()
                        .get(0)
                        .sheets()
                        .get(0)
                        .report()
                        .get());
        assertThat(picked.replaceAll("\\s+", " ")).contains("vehicle's measure: look");
    }

    @Test
    @DisplayName("What is held back has no box to tick; what is picked has one")
    void boxes() {
        Report sheet = sheet(withoutAir());
        assertThat(byHand(table(sheet.page("On hold"), "on-hold"))).isEmpty();
        assertThat(byHand(table(sheet.page("From coating"), "from-coating"))).containsExactly("picked");
    }

    @Test
    void a_count_never_stands_under_measure_out_nor_a_measure_under_count() {
        Table walk = table(sheet(withAir()).page("Pick list"), "bins");
        assertThat(cell(walk, "HO-16", "measure")).isEqualTo("1.5");
        assertThat(cell(walk, "HO-16", "count")).isEmpty();
        assertThat(cell(walk, "FX-M12", "measure")).isEmpty();
        assertThat(cell(walk, "FX-M12", "count")).isEqualTo("6");
    }

    /** 18 are taken: 7 and 8 are fitted, 3 are spares. */
    @Test
    void what_a_part_is_for_adds_up_to_what_is_taken() {
        Table walk = table(sheet(withAir()).page("Pick list"), "bins");
        assertThat(cell(walk, "FX-M8", "stages")).isEqualTo("Front bay 7, Cabin 8, spares 3");
        assertThat(cell(walk, "FX-M8", "count")).isEqualTo("15");
        assertThat(cell(walk, "FX-M8", "spares")).isEqualTo("3");
        assertThat(cell(walk, "FX-M12", "stages")).doesNotContain("spares");
    }

    @Test
    void the_page_for_numbers_says_what_to_write_into_its_boxes() {
        Table serials = table(sheet(withAir()).page("Serials"), "numbers");
        assertThat(cell(serials, "HO-16", "name")).endsWith(", lot");
        assertThat(cell(serials, "CO-1", "name")).doesNotEndWith(", lot");
        assertThat(serials.rows())
                .noneMatch(row -> row.cells().get(0) instanceof Cell.Words part
                        && part.text().equals("FX-M12"));
    }

    @Test
    void all_bags_are_counted_on_one_page_and_nothing_has_a_page_that_is_not_there() {
        assertThat(sheet(withAir()).pages())
                .extracting(Page::name)
                .containsExactly("Pick list", "From coating", "Serials", "Second count");
    }

    @Test
    void each_part_of_a_bag_has_a_box_at_the_second_count_beside_what_must_lie_there_with_its_spares() {
        List<Table> bags = sheet(withAir()).page("Second count").tables().toList();
        assertThat(bags)
                .hasSize(3)
                .allSatisfy(table -> assertThat(byHand(table)).containsExactly("counted"));
        Table front = bags.get(0);
        assertThat(cell(front, "FX-M8", "in-bag"))
                .isEqualTo(String.valueOf(Integer.parseInt(cell(front, "FX-M8", "count"))
                        + Integer.parseInt(cell(front, "FX-M8", "spares"))));
        assertThat(cell(front, "HO-16", "in-bag")).isEqualTo("1.5 m");
    }

    @Test
    void no_cost_stands_anywhere() {
        assertThat(sheet(withAir().extra(TOUCH_UP)).pages())
                .flatExtracting(page -> page.tables().toList())
                .flatExtracting(Table::columns)
                .extracting(Column::kind)
                .extracting(Kind::form)
                .doesNotContain(Kind.Form.MONEY);
    }

    @Test
    @DisplayName(
            "What must be decided or found out is found: each bracket with all that hangs on it, extras without a bin")
    void findings() {
        assertThat(found(withoutAir().extra(SPARE_KEY, TOUCH_UP)))
                .containsExactly(
                        "lines on hold: compressor-bracket 4[3 × FX-M8, 2 × FX-M12, 2 × SP-1, 1 × BR-9]",
                        "extra without bin: Touch-up paint");
    }

    @Test
    void nothing_is_found_where_all_is_decided_and_lies_on_the_walk() {
        assertThat(found(withAir())).isEmpty();
    }

    @Test
    @DisplayName("A bin in an aisle that nobody walks is found, an own bin of the customer's part is not asked for")
    void off_the_walk() {
        assertThat(found(new OrderSketch(strays("Z-01-01-A-01")).extra(SPARE_KEY)))
                .containsExactly("bin off the walk: BM-1 Z-01-01-A-01");
        assertThat(found(new OrderSketch(strays("F-03-01-A-01")).extra(SPARE_KEY)))
                .isEmpty();
    }

    private static Catalogue strays(String bin) {
        return new CatalogueSketch()
                .part(PartSketch.bought("TL-KEY").bin(""))
                .part(PartSketch.bought("BM-1").bin(bin))
                .position(PositionSketch.at("modules").line("modules", "BM-1", "1"))
                .draw();
    }

    private static List<String> found(OrderSketch order) {
        return result(order).findings().all().stream()
                .map(finding -> finding.kind().code() + ": " + finding.subject() + " "
                        + finding.data().getOrDefault("lines", "")
                        + finding.data().getOrDefault("parts", "")
                        + finding.data().getOrDefault("bin", ""))
                .map(String::strip)
                .toList();
    }

    private static TradeResult result(OrderSketch order) {
        Outcome<List<TradeResult>> worked = new PickingTrade().work(List.of(kit(order)), Given.NONE);
        return ((Outcome.Sound<List<TradeResult>>) worked).value().get(0);
    }

    private static Report sheet(OrderSketch order) {
        return result(order).sheets().get(0).report().get();
    }

    private static Table table(Page page, String name) {
        return page.tables()
                .filter(table -> table.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> byHand(Table table) {
        return table.columns().stream()
                .filter(column -> column.kind().form().isByHand())
                .map(Column::key)
                .filter(key -> !key.equals("number"))
                .toList();
    }

    private static String cell(Table table, String part, String column) {
        Row row = table.rows().stream()
                .filter(each -> text(table, each, "part").equals(part))
                .findFirst()
                .orElseThrow();
        return text(table, row, column);
    }

    private static String text(Table table, Row row, String column) {
        int place = table.column(column);
        return Printed.inColumn(table.columns().get(place).kind(), row.cells().get(place));
    }
}
