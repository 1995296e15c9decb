package boltlore.trades.picking;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Tracked;
import boltlore.findings.Findings;
import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import boltlore.report.Cell;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.Table;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.OrderSketch;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class SerialsPageTest {

    @Test
    void several_pieces_with_a_serial_number_each_share_a_line_by_two() {
        assertThat(pieces(Tracked.SERIAL, "3")).containsExactly("1, 2 of 3", "3 of 3");
    }

    @Test
    void one_piece_has_a_line() {
        assertThat(pieces(Tracked.SERIAL, "1")).containsExactly("BM-1");
    }

    @Test
    void a_lot_has_one_line_however_many_there_are() {
        assertThat(pieces(Tracked.LOT, "3")).containsExactly("BM-1");
    }

    @Test
    void what_has_no_number_stands_on_no_page_for_numbers() {
        assertThat(sheet(null, "3").pages()).extracting(Page::name).doesNotContain("Serials");
    }

    @Test
    void what_comes_from_coating_or_stands_outside_the_kit_has_a_box_too() {
        Catalogue catalogue = new CatalogueSketch()
                .part(PartSketch.made("BX-1").coat("main", "0.1").tracked(Tracked.SERIAL))
                .part(PartSketch.bought("HE-1").tracked(Tracked.SERIAL))
                .part(PartSketch.bought("HE-2").tracked(Tracked.SERIAL))
                .position(PositionSketch.at("box").line("box", "BX-1", "1"))
                .draw();
        KitInWork kit = SampleStores.kit(new OrderSketch(catalogue).extra(extra("HE-1", false), extra("HE-2", true)));
        Table serials = PickingReport.compose(kit, PickingTrade.list(kit), Findings.NONE)
                .page("Serials")
                .tables()
                .findFirst()
                .orElseThrow();
        assertThat(said(serials, "part"))
                .as("the customer's own has no number of ours")
                .containsExactly("BX-1", "HE-1");
    }

    private static Extra extra(String part, boolean byCustomer) {
        return new Extra(new PartNumber(part), "", BigDecimal.ONE, "each", null, null, byCustomer, "Wanted.");
    }

    private static List<String> pieces(Tracked tracked, String quantity) {
        Table serials =
                sheet(tracked, quantity).page("Serials").tables().findFirst().orElseThrow();
        String said = serials.name().equals("numbers") ? "part" : "piece";
        return said(serials, said);
    }

    private static List<String> said(Table serials, String column) {
        return serials.rows().stream()
                .map(row -> ((Cell.Words) row.cells().get(serials.column(column))).text())
                .toList();
    }

    private static Report sheet(@Nullable Tracked tracked, String quantity) {
        Catalogue catalogue = new CatalogueSketch()
                .part(PartSketch.bought("BM-1").tracked(tracked))
                .position(PositionSketch.at("modules").line("modules", "BM-1", quantity))
                .draw();
        KitInWork kit = SampleStores.kit(new OrderSketch(catalogue));
        return PickingReport.compose(kit, PickingTrade.list(kit), Findings.NONE);
    }
}
