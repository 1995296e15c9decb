package boltlore.report.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.report.BulkExample;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.report.WorkedExample;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class XlsxWidthTest {

    @Test
    void figures_get_the_room_they_need_however_wide_the_page_gets() {
        Report report = Report.named("list", "List")
                .page(Page.named("One").add(figures(30, new BigDecimal("123456789.12"))))
                .build();
        assertThat(widths(report, 1)).hasSize(30).allMatch(width -> width >= 13);
    }

    @Test
    void a_page_is_as_wide_as_the_sheet_whether_its_table_is_or_not() {
        assertThat(total(WorkedExample.workbook(), 1)).isCloseTo(Grid.sheet(false), within(0.5));
        assertThat(total(WorkedExample.workbook(), 2)).isCloseTo(Grid.sheet(true), within(0.5));
    }

    @Test
    void a_bill_of_24_columns_is_wider_than_the_sheet_only_by_what_its_words_and_figures_need() {
        assertThat(total(BulkExample.workbooks().get(0), 2)).isLessThanOrEqualTo(Grid.sheet(true) * Grid.WIDEST * 1.17);
    }

    @Test
    void a_second_table_spans_columns_of_the_first_so_that_its_figures_have_room() {
        Report report = Report.named("list", "List")
                .page(Page.named("One")
                        .add(figures(12, new BigDecimal("1.1")))
                        .add(Table.named("sums").columns(Column.decimal("sum", "Sum", 2), Column.text("text", "Text")))
                        .add(wide()))
                .build();
        Opened opened = Opened.of(report);
        assertThat(opened.find("xl/worksheets/sheet1.xml", "//mergeCell/@ref")).isNotEmpty();
    }

    @Test
    void a_row_is_as_high_as_its_longest_cell_has_lines() {
        TableBuilder table = Table.named("list").columns(Column.text("a", "A").atMost(10), Column.text("b", "B"));
        table.row().put("a", "one");
        table.row()
                .put(
                        "a",
                        "one two three four five six seven eight nine ten "
                                .repeat(8)
                                .strip());
        Page page = Page.named("One")
                .add(figures(14, new BigDecimal("1000000.5")))
                .add(table)
                .build();
        List<LaidPage.LaidRow> rows = PageLayout.lay(page, "en").page().rows();
        double shortRow = rows.get(rows.size() - 2).height();
        assertThat(rows.get(rows.size() - 1).height()).isGreaterThan(shortRow * 1.5);
    }

    @Test
    void a_heading_over_a_box_stands_away_from_its_rule_and_wraps_sooner() {
        assertThat(heading(Column.text("until", "Calibrated until"))).isEqualTo(LookStyle.lineHeight());
        assertThat(heading(Column.blank("until", "Calibrated until"))).isGreaterThan(LookStyle.lineHeight() * 1.5);
    }

    private static double heading(Column second) {
        List<ColumnWidth> widths = List.of(ColumnWidth.fixed(30), ColumnWidth.fixed(14.9));
        Grid grid = Grid.of(widths, false, false);
        Table table = Table.named("list").columns(Column.text("a", "A"), second).build();
        return new TableLayout(grid, table, grid.span(widths)).heading().height();
    }

    /** Ten short texts that wrap sooner cost lines of their own; the one long text is the highest of its row alone. */
    @Test
    void a_column_of_rows_that_are_high_anyway_gives_way_to_the_one_that_makes_them_high() {
        String words = "lock: medium strength, on clean dry thread; sign for it";
        TableBuilder table = Table.named("list")
                .columns(Column.text("fit", "Fit"), Column.text("with", "With"), Column.text("how", "How"));
        for (int i = 0; i < 10; i++) {
            table.row()
                    .put("fit", "Battery box brackets, right")
                    .put("with", "6 × M10 × 25, 8.8")
                    .put("how", words);
        }
        List<ColumnWidth> needed = ColumnWidth.of(table.build());
        List<Double> widths = ColumnFit.narrowed(needed, 55);
        double high = java.util.stream.IntStream.range(0, 3)
                .map(i -> needed.get(i).lines(1, widths.get(i)))
                .max()
                .orElseThrow();

        assertThat(widths.stream().mapToDouble(each -> each).sum()).isCloseTo(55, within(1.0));
        assertThat(high).isEqualTo(2);
    }

    @Test
    void a_short_text_of_two_lines_makes_its_row_higher_than_one_of_one_line() {
        TableBuilder table = Table.named("list").columns(Column.text("a", "A name with room"));
        table.row().put("a", "a, b");
        table.row().put("a", "a,\nb");
        List<LaidPage.LaidRow> rows = PageLayout.lay(
                        Page.named("One").add(table).build(), "en")
                .page()
                .rows();
        assertThat(rows.get(rows.size() - 1).height())
                .isGreaterThan(rows.get(rows.size() - 2).height());
    }

    @Test
    void a_text_runs_as_wide_as_its_letters_not_as_their_number() {
        assertThat(FontMetrics.width("illicit")).isLessThan(FontMetrics.width("WAGMMOW"));
        assertThat(FontMetrics.width("0123456789")).isEqualTo(10);
        assertThat(FontMetrics.lines("one two three", 100)).isEqualTo(1);
        assertThat(FontMetrics.lines("one two three", 5)).isEqualTo(3);
        assertThat(FontMetrics.lines("", 4)).isEqualTo(1);
        assertThat(FontMetrics.lines("two\nlines", 100)).isEqualTo(2);
    }

    private static TableBuilder figures(int columns, BigDecimal figure) {
        TableBuilder table = Table.named("figures");
        for (int i = 0; i < columns; i++) {
            table.columns(Column.decimal("c" + i, "C", 2));
        }
        for (int i = 0; i < columns; i++) {
            table.row().put("c" + i, figure);
        }
        return table;
    }

    private static TableBuilder wide() {
        TableBuilder table = Table.named("wide").columns(Column.decimal("sum", "Sum", 2), Column.text("t", "T"));
        table.row().put("sum", new BigDecimal("123456789012345.12")).put("t", "text");
        return table;
    }

    private static double total(Report report, int sheet) {
        return widths(report, sheet).stream().mapToDouble(Double::doubleValue).sum();
    }

    private static List<Double> widths(Report report, int sheet) {
        Stream<String> widths = Opened.of(report).find("xl/worksheets/sheet" + sheet + ".xml", "//col/@width").stream();
        return widths.map(Double::valueOf).toList();
    }
}
