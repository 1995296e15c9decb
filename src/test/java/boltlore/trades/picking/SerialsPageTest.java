package boltlore.trades.picking;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Tracked;
import boltlore.findings.Findings;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.OrderSketch;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import boltlore.trades.KitInWork;
import org.junit.jupiter.api.Test;

class SerialsPageTest {

    @Test
    void several_pieces_with_a_serial_number_each_get_a_line_each() {
        Report sheet = sheet(Tracked.SERIAL, "3");
        assertThat(sheet.page("Serials").tables().findFirst().orElseThrow().rows())
                .hasSize(3);
    }

    @Test
    void one_piece_has_its_box_on_the_walk() {
        assertThat(sheet(Tracked.SERIAL, "1").pages()).extracting(Page::name).doesNotContain("Serials");
    }

    @Test
    void a_lot_has_its_box_on_the_walk_however_many_there_are() {
        assertThat(sheet(Tracked.LOT, "3").pages()).extracting(Page::name).doesNotContain("Serials");
    }

    private static Report sheet(Tracked tracked, String quantity) {
        Catalogue catalogue = new CatalogueSketch()
                .part(PartSketch.bought("BM-1").tracked(tracked))
                .position(PositionSketch.at("modules").line("modules", "BM-1", quantity))
                .draw();
        KitInWork kit = SampleStores.kit(new OrderSketch(catalogue));
        return PickingReport.compose(kit, PickingTrade.list(kit), Findings.NONE);
    }
}
