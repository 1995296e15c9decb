package boltlore.trades.bill.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Masses;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Formula;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.CostedBill;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The live sums of the bill")
class BillSumsTest {

    @ParameterizedTest
    @ValueSource(strings = {"BL-1001", "BL-1003", "BL-1010", "BL-1012"})
    @DisplayName("come to the core's own decimals, each worked out from the plain cells")
    void agree(String order) {
        List<WorkedOut.Sum> sums = new WorkedOut(DemoKit.of(order).billBook()).sums();

        assertThat(sums).hasSizeGreaterThan(500).allMatch(WorkedOut.Sum::agrees);
    }

    @Test
    @DisplayName("would not agree if one row were a cent off")
    void would_not_agree() {
        Formula one = Formula.fixed(new BigDecimal("1.00"));
        TableBuilder table = Table.named("bill").columns(Column.decimal("cost", "Cost", 2));
        table.row().put("cost", one, new BigDecimal("1.01"));
        Report report =
                Report.named("bill", "Bill").page(Page.named("Bill").add(table)).build();

        assertThat(new WorkedOut(report).sums()).hasSize(1).noneMatch(WorkedOut.Sum::agrees);
    }

    @Test
    @DisplayName("by sub-system and by make or buy, both add up to the kit")
    void both_ways() {
        DemoKit kit = DemoKit.of("BL-1001");
        CostedBill costed = kit.priced();
        Table bill = bill(kit);

        BigDecimal cost = result(bill, "kit", "extended");
        assertThat(result(bill, "sum-make", "extended").add(result(bill, "sum-buy", "extended")))
                .isEqualByComparingTo(cost);
        assertThat(costed.bySubSystem().keySet().stream()
                        .map(subSystem -> result(bill, "subtotal-" + subSystem, "extended"))
                        .reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo(cost);
        assertThat(cost.add(result(bill, "kit", "coating")))
                .isEqualByComparingTo(costed.totals().cost());
    }

    @Test
    @DisplayName("of mass count leaves only, so that assemblies add nothing twice")
    void mass() {
        DemoKit kit = DemoKit.of("BL-1001");

        assertThat(result(bill(kit), "kit", "massExtended")).isEqualByComparingTo(Masses.kitKg(kit.bill()));
    }

    private static Table bill(DemoKit kit) {
        return kit.billBook()
                .page("Bill")
                .tables()
                .filter(table -> table.name().equals("bill"))
                .findFirst()
                .orElseThrow();
    }

    private static BigDecimal result(Table table, String row, String column) {
        Cell cell = table.rows().get(table.row(row)).cells().get(table.column(column));
        return ((Cell.Worked) cell).result();
    }
}
