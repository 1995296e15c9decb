package boltlore.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ReportTest {

    @Test
    void a_workbook_is_written_down_from_front_to_back() {
        Report report = WorkedExample.workbook();
        assertThat(report.pages()).extracting(Page::name).containsExactly("Front", "Bill");
        assertThat(report.dated()).isEqualTo(LocalDate.of(2026, 3, 12));
    }

    @Test
    @DisplayName("A row's words reach up to its first filled cell")
    void words_reach_up_to_the_first_filled_cell() {
        Table bill = WorkedExample.workbook().page("Bill").tables().findFirst().orElseThrow();
        assertThat(bill.rows().get(bill.row("subtotal-drive")).wordsCover()).isEqualTo(5);
        assertThat(bill.rows().get(bill.row("sum-make")).wordsCover()).isEqualTo(2);
    }

    @Test
    void a_money_column_says_its_currency_in_the_heading() {
        Column cost = Column.money("cost", "Cost", java.util.Currency.getInstance("EUR"));
        assertThat(cost.headingWithUnit()).isEqualTo("Cost (EUR)");
        assertThat(Column.text("name", "Name").headingWithUnit()).isEqualTo("Name");
    }

    @Test
    void a_cell_for_a_column_that_is_not_there_is_refused_with_the_names_that_are() {
        TableBuilder table = Table.named("parts").columns(Column.text("part", "Part"));
        assertThatThrownBy(() -> table.row().put("prat", "B-100"))
                .hasMessage("Table 'parts' has no column 'prat', only [part]");
    }

    @Test
    void a_formula_that_refers_to_nothing_is_refused_when_the_workbook_is_built() {
        assertThatThrownBy(() -> withTotal(Formula.cell("parts", "gone", "count")))
                .hasMessageContaining("no row 'gone'");
        assertThatThrownBy(() -> withTotal(Formula.sumOf("count", "gone"))).hasMessageContaining("no group 'gone'");
        assertThat(withTotal(Formula.cell("parts", "there", "count"))).isNotNull();
    }

    @Test
    void two_pages_of_one_name_are_refused() {
        ReportBuilder report =
                Report.named("list", "List").page(Page.named("One")).page(Page.named("One"));
        assertThatThrownBy(report::build).hasMessageContaining("two pages 'One'");
    }

    @Test
    void a_file_name_that_leads_elsewhere_is_refused() {
        ReportBuilder report = Report.named("../list", "List").page(Page.named("One"));
        assertThatThrownBy(report::build).hasMessageContaining("'../list'");
    }

    private static Report withTotal(Formula formula) {
        TableBuilder table = Table.named("parts").columns(Column.whole("count", "Count"));
        table.row("there").put("count", 4);
        table.total("all", "All").put("count", formula, BigDecimal.valueOf(4));
        return Report.named("list", "List").page(Page.named("One").add(table)).build();
    }
}
