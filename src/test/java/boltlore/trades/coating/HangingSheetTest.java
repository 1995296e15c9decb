package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.demo.Demo;
import boltlore.report.Approved;
import boltlore.report.Page;
import boltlore.report.Picture;
import boltlore.report.Report;
import boltlore.report.text.TextWriter;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class HangingSheetTest {

    private static final int WIDE = 200;

    private static Report demo(CoatPlan plan) {
        return HangingSheet.compose(CoatJob.of(plan, Demo.catalogue()));
    }

    private static Report ofSample(boolean coated) {
        SampleOrders order = SampleOrders.order("BL-1")
                .with(
                        1,
                        SampleShop.part("PL-1", SampleShop.coat("0.2")),
                        coated ? SampleShop.OWN_BLACK : SampleShop.ZINC_BY_AREA);
        var catalogue = SampleOrders.catalogue("PB-BLACK", SampleShop.OWN_BLACK, SampleShop.ZINC_BY_AREA);
        return HangingSheet.compose(CoatJob.of(CoatPlanner.plan(List.of(order.bill()), catalogue), catalogue));
    }

    @Test
    @DisplayName("A page for each load of the demo order, with its drawing")
    void a_page_for_each_load() {
        CoatPlan plan = CoatPlanner.plan(List.of(Demo.bill("bl-1001")), Demo.catalogue());
        Report sheet = demo(plan);
        assertThat(sheet.pages())
                .extracting(Page::name)
                .containsExactlyElementsOf(plan.loads()
                        .map(OvenLoad::number)
                        .map(each -> "Load " + each)
                        .toList());
        assertThat(sheet.pages()).allMatch(page -> page.blocks().stream().anyMatch(Picture.class::isInstance));
    }

    @Test
    @DisplayName("The demo order's loads read as approved")
    void reads_as_approved() {
        CoatPlan plan = CoatPlanner.plan(List.of(Demo.bill("bl-1001")), Demo.catalogue());
        Approved.check("trades/coating/hanging-bl-1001", new TextWriter(WIDE).text(demo(plan)));
    }

    @Test
    @DisplayName("An oven whose rails are not told gets words instead of a drawing")
    void no_rails() {
        Report sheet = ofSample(true);
        assertThat(SheetWords.of(sheet)).contains("The rails of Box oven are not known");
        assertThat(sheet.pages().get(0).blocks()).noneMatch(Picture.class::isInstance);
    }

    @Test
    @DisplayName("Where nothing goes into an oven of one's own, one page says so")
    void nothing() {
        assertThat(SheetWords.of(ofSample(false))).contains("Nothing is cured here.");
    }
}
