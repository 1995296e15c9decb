package boltlore.trades.costing.cost;

import static boltlore.trades.costing.SketchedPart.bought;
import static boltlore.trades.costing.SketchedPart.made;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import boltlore.trades.costing.PriceBookSketch;
import boltlore.trades.costing.SketchedPart;
import boltlore.trades.costing.SmallKit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The full cost of a kit")
class FullCostingTest {

    private static FullCost cost(PriceBookSketch prices, SmallKit kit) {
        return FullCosting.cost(kit.priced(), prices.book(), extra -> BigDecimal.ZERO);
    }

    /** A kit of so many of one part. */
    private static Elements cost(PriceBookSketch prices, SketchedPart part, String quantity) {
        SmallKit kit = new SmallKit().know(part);
        return cost(prices, kit.take("drive", part.part().number().text(), quantity))
                .kit();
    }

    private static void has(Elements elements, Element element, String amount) {
        assertThat(elements.of(element)).as("%s of %s", element, elements).isEqualByComparingTo(amount);
    }

    @Nested
    @DisplayName("of made parts")
    class Made {

        private final SketchedPart plate = made("PL-1").cost("30.00").operation("bend", "60", "12");

        @Test
        void has_labour_by_the_hour_for_each_piece() {
            Elements elements = cost(new PriceBookSketch().labour("40"), plate, "5");
            has(elements, Element.LABOUR, "40.00");
        }

        @Test
        void takes_an_operations_own_rate_before_the_usual_one() {
            PriceBookSketch prices = new PriceBookSketch().labour("40").operation("bend", "50", false);
            has(cost(prices, plate, "5"), Element.LABOUR, "50.00");
            PriceBookSketch others = new PriceBookSketch().labour("40").operation("weld", "50", false);
            has(cost(others, plate, "5"), Element.LABOUR, "40.00");
        }

        @Test
        void shares_a_set_up_over_the_lot() {
            PriceBookSketch prices = new PriceBookSketch().labour("40");
            has(cost(prices, plate, "1"), Element.SET_UP, "40.00");
            has(cost(prices.lot(8), plate, "1"), Element.SET_UP, "5.00");
            has(cost(prices.lot(8), plate, "2"), Element.SET_UP, "10.00");
            has(cost(prices.lot("PL-1", 4), plate, "1"), Element.SET_UP, "10.00");
        }

        @Test
        void does_not_count_labour_twice_that_the_part_masters_cost_holds() {
            PriceBookSketch prices = new PriceBookSketch().labour("40").costsHold("60", 10);
            Elements elements = cost(prices, plate, "1");
            // 60 minutes over 10 and 12 minutes are 18 minutes at 60 an hour: 18.00 of the 30.00.
            has(elements, Element.MATERIAL, "12.00");
            has(elements, Element.LABOUR, "8.00");
        }

        @Test
        void takes_all_of_the_cost_for_material_where_it_holds_no_labour() {
            has(cost(new PriceBookSketch().labour("40"), plate, "2"), Element.MATERIAL, "60.00");
        }

        @Test
        void puts_outside_operations_apart_without_overhead_on_labour() {
            PriceBookSketch prices =
                    new PriceBookSketch().operation("bend", "50", true).lot(10).overhead("100", "0");
            Elements elements = cost(prices, plate, "1");
            has(elements, Element.OUTSIDE_WORK, "15.00");
            has(elements, Element.LABOUR, "0");
            has(elements, Element.OVERHEAD, "0");
        }

        @Test
        void loses_material_and_works_on_what_is_lost_too() {
            SketchedPart lossy = made("PL-1").cost("10.00").scrap("20").operation("bend", "0", "12");
            Elements elements = cost(new PriceBookSketch().labour("40"), lossy, "4");
            has(elements, Element.MATERIAL, "40.00");
            has(elements, Element.SCRAP, "10.00");
            has(elements, Element.LABOUR, "40.00");
        }

        @Test
        void tells_own_coating_and_outside_coating_apart() {
            has(cost(new PriceBookSketch(), made("A-1").coated("black"), "2"), Element.OWN_COATING, "4.01");
            has(cost(new PriceBookSketch(), made("A-1").coated("zinc"), "2"), Element.OUTSIDE_WORK, "4.01");
        }

        @Test
        void adds_an_assemblys_own_step_to_its_parts() {
            FullCost cost = cost(
                    new PriceBookSketch().labour("60"),
                    new SmallKit()
                            .know(made("CR-1")
                                    .cost("0")
                                    .operation("weld", "0", "10")
                                    .contains("TU-1", "2"))
                            .know(made("TU-1").cost("3.00").operation("saw", "0", "1"))
                            .take("drive", "CR-1", "1"));
            has(cost.kit(), Element.LABOUR, "12.00");
            has(cost.kit(), Element.MATERIAL, "6.00");
            assertThat(cost.made().get(new PartNumber("CR-1")).total()).isEqualByComparingTo("10.00");
        }
    }

    @Nested
    @DisplayName("agrees with published values:")
    class Published {

        static Stream<CheckRow> job() {
            return CheckTable.rows("cost-and-price.csv", "CO-01");
        }

        static Stream<CheckRow> scrap() {
            return CheckTable.rows("cost-and-price.csv", "CO-02");
        }

        @ParameterizedTest(name = "{0}")
        @MethodSource("job")
        void a_job_of_material_labour_and_overhead_on_labour(CheckRow row) {
            // One minute at sixty times the labour is the labour.
            SketchedPart job = made("JOB-1").cost(row.text("material")).operation("work", "0", "1");
            BigDecimal perHour = row.number("direct_labour").multiply(BigDecimal.valueOf(60));
            Elements elements = cost(
                    new PriceBookSketch()
                            .labour(perHour.toPlainString())
                            .overhead(row.text("overhead_pct_of_labour"), "0"),
                    job,
                    "1");
            near(row, "direct_labour", elements.of(Element.LABOUR));
            near(row, "expected_overhead", elements.of(Element.OVERHEAD));
            near(row, "expected_total_cost", elements.total());
            near(row, "expected_unit_cost", elements.total().divide(row.number("units"), MathContext.DECIMAL128));
        }

        @ParameterizedTest(name = "{0}")
        @MethodSource("scrap")
        void what_is_issued_is_what_is_needed_over_what_stays_good(CheckRow row) {
            SketchedPart cable = bought("CB-1").cost("10000").scrap(row.text("scrap_pct"));
            Elements elements = cost(new PriceBookSketch(), cable, "1");
            near(row, "expected_factor", elements.total().divide(new BigDecimal("10000"), MathContext.DECIMAL128));
        }

        private void near(CheckRow row, String column, BigDecimal worked) {
            assertThat(worked).isCloseTo(row.number(column), within(row.number("tolerance_abs")));
        }
    }

    @Nested
    @DisplayName("of bought parts")
    class Bought {

        private static final String CABLES = "Voltharne Components";

        private final SketchedPart cable =
                bought("CB-1").from(CABLES, null, null).cost("100.00").mass("3").customs("8544.42", "US");

        @Test
        void has_freight_by_mass_or_by_price() {
            PriceBookSketch byMass =
                    new PriceBookSketch().delivery(CABLES, "2.50", null, "0", 1).duty("85", "", "0");
            PriceBookSketch byPrice =
                    new PriceBookSketch().delivery(CABLES, null, "4", "0", 1).duty("85", "", "0");
            has(cost(byMass, cable, "2"), Element.FREIGHT, "15.00");
            has(cost(byPrice, cable, "2"), Element.FREIGHT, "8.00");
        }

        @Test
        void has_no_freight_from_a_supplier_that_delivers_free() {
            PriceBookSketch prices = new PriceBookSketch()
                    .delivery("Another", "2.50", null, "0", 1)
                    .duty("85", "", "0");
            has(cost(prices, cable, "2"), Element.FREIGHT, "0");
        }

        @Test
        void has_duty_on_price_and_freight_or_on_the_price_alone() {
            PriceBookSketch prices =
                    new PriceBookSketch().delivery(CABLES, null, "10", "0", 1).duty("8544", "", "5");
            has(cost(prices, cable, "1"), Element.DUTY, "5.50");
            has(cost(prices.dutyOnPriceAlone(), cable, "1"), Element.DUTY, "5.00");
        }

        @Test
        void takes_the_closest_heading_and_of_equal_ones_that_of_the_origin() {
            PriceBookSketch prices = new PriceBookSketch().duty("85", "", "1").duty("8544", "", "2");
            has(cost(prices, cable, "1"), Element.DUTY, "2.00");
            has(cost(prices.duty("8544", "US", "3"), cable, "1"), Element.DUTY, "3.00");
            has(cost(prices.duty("8544.42", "CN", "9"), cable, "1"), Element.DUTY, "3.00");
        }

        @Test
        void has_no_duty_on_goods_of_a_free_origin() {
            PriceBookSketch prices = new PriceBookSketch().duty("85", "", "5");
            has(cost(prices, cable.customs("8544.42", "PL"), "1"), Element.DUTY, "0");
        }

        @Test
        void shares_the_clearance_of_a_consignment_over_its_kits_and_goods() {
            PriceBookSketch prices = new PriceBookSketch()
                    .delivery(CABLES, null, "0", "100.01", 2)
                    .duty("85", "", "0");
            FullCost cost = cost(
                    prices,
                    new SmallKit()
                            .know(cable)
                            .know(bought("CB-2").from(CABLES, null, null).cost("200.00"))
                            .know(bought("BO-1").cost("50.00"))
                            .take("drive", "CB-1", "1")
                            .take("drive", "CB-2", "1")
                            .take("drive", "BO-1", "1"));
            assertThat(cost.landed())
                    .extracting(part -> part.elements().of(Element.CLEARANCE).setScale(2))
                    .containsExactly(eur("0.00"), eur("16.67"), eur("33.34"));
        }

        @Test
        void lands_at_price_freight_duty_and_clearance_without_overhead() {
            PriceBookSketch prices = new PriceBookSketch()
                    .delivery(CABLES, null, "10", "30", 1)
                    .duty("8544", "", "5")
                    .overhead("0", "4");
            FullCost cost = cost(prices, new SmallKit().know(cable).take("drive", "CB-1", "1"));
            assertThat(cost.landed()).singleElement().satisfies(part -> {
                assertThat(part.landed()).isEqualByComparingTo("145.50");
                assertThat(part.dutyPercent()).isEqualByComparingTo("5");
            });
            has(cost.kit(), Element.OVERHEAD, "4.00");
        }

        @Test
        void has_nothing_for_what_comes_inside_a_bought_assembly() {
            FullCost cost = cost(
                    new PriceBookSketch().labour("40"),
                    new SmallKit()
                            .know(bought("BX-1").cost("70.00").contains("PL-1", "1"))
                            .know(made("PL-1").cost("9.00").operation("bend", "5", "5"))
                            .take("drive", "BX-1", "1"));
            assertThat(cost.total()).isEqualByComparingTo("70.00");
        }
    }

    @Nested
    @DisplayName("of extras")
    class Extras {

        private FullCost with(@Nullable String part, @Nullable String cost, boolean byCustomer) {
            return cost(
                    new PriceBookSketch().labour("60").overhead("100", "10"),
                    new SmallKit()
                            .know(made("CR-1")
                                    .cost("5.00")
                                    .operation("weld", "0", "10")
                                    .contains("TU-1", "2"))
                            .know(bought("TU-1").cost("20.00"))
                            .extra(new Extra(
                                    part == null ? null : new PartNumber(part),
                                    part == null ? "Roof rack" : "",
                                    new BigDecimal("2"),
                                    "each",
                                    cost == null ? null : new BigDecimal(cost),
                                    null,
                                    byCustomer,
                                    "Wanted.")));
        }

        @Test
        void is_that_of_a_part_with_all_inside_it() {
            // Twice: material 5 + 40, labour 10, overhead of 10 on labour and of 0.50 and 4 on material.
            assertThat(with("CR-1", null, false).ofExtras().total()).isEqualByComparingTo("139.00");
        }

        @Test
        void is_what_the_order_tells() {
            assertThat(with("CR-1", "12.50", false).ofExtras().total()).isEqualByComparingTo("25.00");
            assertThat(with(null, "80.00", false).ofExtras().total()).isEqualByComparingTo("160.00");
        }

        @Test
        void is_nothing_where_the_customer_supplies_it() {
            assertThat(with("CR-1", null, true).ofExtras().total()).isZero();
        }
    }

    private static BigDecimal eur(String amount) {
        return new BigDecimal(amount);
    }
}
