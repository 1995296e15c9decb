package boltlore.trades.costing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.bill.Costs;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.measure.Percent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Currency;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Costs and prices agree with text-book identities and a published exercise")
class CostCheckValuesTest {

    private static final MinorUnit CENT = new MinorUnit(Currency.getInstance("EUR"));

    static Stream<CheckRow> jobCost() {
        return CheckTable.rows("cost-and-price.csv", "CO-01");
    }

    static Stream<CheckRow> scrap() {
        return CheckTable.rows("cost-and-price.csv", "CO-02");
    }

    static Stream<CheckRow> margin() {
        return CheckTable.rows("cost-and-price.csv", "CO-03");
    }

    static Stream<CheckRow> wantedMargin() {
        return CheckTable.rows("cost-and-price.csv", "CO-04");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("jobCost")
    void a_job_costs_material_labour_and_overhead_on_labour(CheckRow row) {
        BigDecimal overhead =
                row.number("direct_labour").multiply(Percent.fraction(row.number("overhead_pct_of_labour")));
        CostedBill costed = new SmallKit()
                .know(SketchedPart.bought("MAT-1").cost(row.text("material")))
                .know(SketchedPart.made("JOB-1")
                        .cost(row.number("direct_labour").add(overhead).toPlainString())
                        .contains("MAT-1", "1"))
                .take("drive", "JOB-1", "1")
                .priced();

        assertThat(overhead).isEqualByComparingTo(row.number("expected_overhead"));
        near(row, "expected_total_cost", costed.totals().cost());
        near(row, "expected_unit_cost", costed.totals().cost().divide(row.number("units"), MathContext.DECIMAL128));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scrap")
    void scrap_divides(CheckRow row) {
        near(row, "expected_factor", Costs.toIssue(BigDecimal.ONE, row.number("scrap_pct")));
        assertThat(Costs.toIssue(BigDecimal.ONE, row.number("scrap_pct"))).isGreaterThan(new BigDecimal("1.05"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("margin")
    void margin_is_not_mark_up(CheckRow row) {
        BigDecimal cost = new BigDecimal("100.00");
        BigDecimal price = Price.withMarkUp(cost, row.number("markup_pct"), CENT);

        near(
                row,
                "expected_margin_pct",
                price.subtract(cost).multiply(BigDecimal.valueOf(100)).divide(price, MathContext.DECIMAL128));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wantedMargin")
    void a_wanted_margin_divides(CheckRow row) {
        near(row, "expected_price", Price.forMargin(row.number("cost"), row.number("margin_pct"), CENT));
    }

    private static void near(CheckRow row, String column, BigDecimal worked) {
        assertThat(worked).as(row.toString()).isCloseTo(row.number(column), within(row.number("tolerance_abs")));
    }
}
