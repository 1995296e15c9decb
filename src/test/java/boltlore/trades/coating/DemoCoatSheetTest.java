package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Item;
import boltlore.demo.Demo;
import boltlore.report.Approved;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.Table;
import boltlore.report.text.TextWriter;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The shipped demo orders as the coating shop gets them. */
class DemoCoatSheetTest {

    private static final int WIDE = 200;

    private static CoatPlan plan(String... orders) {
        return CoatPlanner.plan(Stream.of(orders).map(Demo::bill).toList(), Demo.catalogue());
    }

    private static Report sheet(CoatPlan plan) {
        CoatJob job = CoatJob.of(plan, Demo.catalogue());
        return CoatSheet.compose(job, CoatingFindings.find(job));
    }

    private static int pieces(CoatPlan plan) {
        return Stream.of(
                        plan.batches().stream()
                                .flatMap(batch -> Stream.concat(
                                        batch.rows().stream(),
                                        batch.tooBig().stream().map(big -> big.row()))),
                        plan.sendOuts().stream().flatMap(sendOut -> sendOut.rows().stream()),
                        plan.onHold().stream())
                .flatMap(rows -> rows)
                .mapToInt(BatchRow::pieces)
                .sum();
    }

    @Test
    void an_order_that_has_not_decided_about_its_brackets() {
        Report sheet = sheet(plan("bl-1002"));
        Approved.check("trades/coating/bl-1002", new TextWriter(WIDE).text(sheet));
    }

    @Test
    void every_coated_piece_of_the_bill_is_somewhere_on_the_sheet() {
        BigDecimal coated = Demo.bill("bl-1002").coated().map(Item::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(pieces(plan("bl-1002"))).isEqualTo(coated.intValueExact());
    }

    @Test
    void several_orders_together_are_all_their_pieces() {
        assertThat(pieces(plan("bl-1001", "bl-1002"))).isEqualTo(pieces(plan("bl-1001")) + pieces(plan("bl-1002")));
    }

    @Test
    void brackets_that_are_left_out_do_not_appear() {
        assertThat(SheetWords.of(sheet(plan("bl-1003"))))
                .contains("PV-RFB-L | ")
                .doesNotContain("PV-KB | ")
                .doesNotContain("On hold");
    }

    @Test
    void each_earth_point_stands_beside_the_drawing_that_gives_its_limit() {
        List<Table> earth = sheet(plan("bl-1001")).pages().stream()
                .flatMap(Page::tables)
                .filter(table -> table.name().equals("earth"))
                .toList();
        assertThat(earth)
                .isNotEmpty()
                .allSatisfy(table -> assertThat(table.rows())
                        .allSatisfy(row -> assertThat(row.cells().get(table.column("drawing")))
                                .asString()
                                .containsPattern("D-[A-Z]+-\\d+ [A-Z]")));
    }
}
