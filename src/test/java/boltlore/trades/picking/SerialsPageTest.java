package boltlore.trades.picking;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Tracked;
import boltlore.findings.Findings;
import boltlore.report.Cell;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.Table;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.OrderSketch;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import boltlore.trades.KitInWork;
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

    private static List<String> pieces(Tracked tracked, String quantity) {
        Table serials =
                sheet(tracked, quantity).page("Serials").tables().findFirst().orElseThrow();
        String said = serials.name().equals("numbers") ? "part" : "piece";
        return serials.rows().stream()
                .map(row -> ((Cell.Words) row.cells().get(serials.column(said))).text())
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
