package boltlore.trades.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Bill;
import boltlore.bill.BillMaker;
import boltlore.bill.Item;
import boltlore.bill.Masses;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.demo.Demo;
import boltlore.findings.Finding;
import boltlore.findings.Kind;
import boltlore.measure.PartNumber;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import boltlore.resolution.FamilyPlan;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The demo pickup's carrier tubes are cut to the width between its rails: less 24 mm on early bodies, 12 mm more on late ones. */
@DisplayName("What is cut to a dimension measured on the vehicle")
class MeasuredLengthsTest {

    private static final Catalogue CATALOGUE = Demo.catalogue();

    @Test
    void has_the_length_that_follows_from_it() {
        assertThat(part(measured("bl-2002", "508"), "ST-BC-CT-E")
                        .making()
                        .cuts()
                        .get(0)
                        .lengthMm())
                .isEqualByComparingTo("484");
        assertThat(part(measured("bl-2002", "520"), "ST-BC-CT-E")
                        .making()
                        .cuts()
                        .get(0)
                        .lengthMm())
                .isEqualByComparingTo("496");
    }

    /** Square tube 40 x 40 x 3 with sharp corners, 444 mm², at 7850 kg/m³, the density of steel in EN 10025 and EN 1991-1-1 (from memory). */
    @Test
    void weighs_what_a_tube_of_that_length_weighs() {
        Bill bill = measured("bl-2002", "508");
        double tubeKg = 444e-6 * 7850 * 0.484;

        assertThat(part(bill, "ST-BC-CT-E").massKg().doubleValue()).isCloseTo(tubeKg, Offset.offset(0.001));
        assertThat(Masses.kitKg(measured("bl-2002", "510"))
                        .subtract(Masses.kitKg(bill))
                        .doubleValue())
                .isCloseTo(quantity(bill, "ST-BC-CT-E") * 444e-6 * 7850 * 0.002, Offset.offset(0.0005));
    }

    @Test
    void is_as_on_the_drawing_where_the_usual_was_measured() {
        assertThat(part(measured("bl-2002", "510"), "ST-BC-CT-E"))
                .isEqualTo(CATALOGUE.part(new PartNumber("ST-BC-CT-E")));
    }

    @Test
    void differs_between_orders_on_one_cutting_list() {
        CutPlan plan = CutPlanner.plan(
                List.of(measured("bl-2001", "510"), measured("bl-2003", "515")), CATALOGUE, RemnantRack.EMPTY);

        assertThat(plan.materials().stream()
                        .flatMap(cuts -> cuts.bars().stream())
                        .flatMap(bar -> bar.pieces().stream())
                        .filter(piece -> piece.set().part().number().text().equals("ST-BC-CT-L"))
                        .map(piece -> piece.set().order() + " "
                                + piece.cut().lengthMm().toPlainString())
                        .distinct())
                .containsExactlyInAnyOrder("BL-2001 522", "BL-2003 527");
        assertThat(kinds(plan)).doesNotContain(CuttingFinding.DIMENSION_NOT_MEASURED);
    }

    @Test
    void stops_the_list_until_it_is_measured() {
        CutPlan plan = CutPlanner.plan(List.of(bill("bl-2002", Map.of())), CATALOGUE, RemnantRack.EMPTY);

        assertThat(kinds(plan)).contains(CuttingFinding.DIMENSION_NOT_MEASURED);
        assertThat(plan.findings(Currency.getInstance("EUR")).all())
                .filteredOn(finding -> finding.kind() == CuttingFinding.DIMENSION_NOT_MEASURED)
                .singleElement()
                .satisfies(finding ->
                        assertThat(finding.says()).contains("ST-BC-CT-E").contains("500 to 520 mm"));
    }

    private static List<Kind> kinds(CutPlan plan) {
        return plan.findings(Currency.getInstance("EUR")).all().stream()
                .map(Finding::kind)
                .toList();
    }

    private static Bill measured(String order, String railGapMm) {
        return bill(order, Map.of("rail-gap", new BigDecimal(railGapMm)));
    }

    private static Bill bill(String name, Map<String, BigDecimal> measuredMm) {
        Order order = new OrderBuilder(Demo.order(name)).measuredMm(measuredMm).build();
        FamilyPlan plan = new FamilyPlan(CATALOGUE, order.choices().family());
        return BillMaker.make(plan, order, Demo.bill(name).resolved());
    }

    private static Part part(Bill bill, String number) {
        return items(bill, number).get(0).part();
    }

    private static double quantity(Bill bill, String number) {
        return items(bill, number).stream()
                .mapToDouble(item -> item.quantity().doubleValue())
                .sum();
    }

    private static List<Item> items(Bill bill, String number) {
        return bill.all()
                .filter(item -> item.part().number().text().equals(number))
                .toList();
    }
}
