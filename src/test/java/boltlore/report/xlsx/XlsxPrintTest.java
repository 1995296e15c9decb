package boltlore.report.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.BulkExample;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.PrintSetup;
import boltlore.report.PrintSetup.PageCount;
import boltlore.report.Report;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.report.WorkedExample;
import boltlore.report.drawing.Drawing;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class XlsxPrintTest {

    private static final String FIRST = "xl/worksheets/sheet1.xml";
    private static final String SECOND = "xl/worksheets/sheet2.xml";
    private static final String BOOK = "xl/workbook.xml";

    @Test
    void a_page_prints_on_a4_fitted_to_the_width_and_as_long_as_it_gets() {
        Opened opened = Opened.of(WorkedExample.workbook());
        assertThat(opened.find(FIRST, "//pageSetup/@paperSize")).containsExactly("9");
        assertThat(opened.find(FIRST, "//pageSetUpPr/@fitToPage")).containsExactly("true");
        assertThat(opened.find(FIRST, "//pageSetup/@fitToWidth")).containsExactly("1");
        assertThat(opened.find(FIRST, "//pageSetup/@fitToHeight")).containsExactly("0");
    }

    @Test
    void each_page_prints_from_its_first_cell_to_its_last_row() {
        TableBuilder table = Table.named("t").columns(Column.text("a", "A"), Column.decimal("b", "B", 1));
        table.row().put("a", "x").put("b", BigDecimal.ONE);
        Report report =
                Report.named("list", "List").page(Page.named("One").add(table)).build();
        assertThat(Opened.of(report).find(BOOK, "//definedName[@name='_xlnm.Print_Area']"))
                .singleElement()
                .asString()
                .matches("One!\\$A\\$1:\\$[A-Z]+\\$2");
    }

    /** Number formats name a language as ECMA-376 part 1, 18.8.31 has it. */
    @ParameterizedTest
    @CsvSource({"en, ''", "de, [$-407]", "fr, [$-40C]"})
    void numbers_keep_the_decimal_sign_of_the_sheets_language_wherever_it_is_opened(String language, String locale) {
        TableBuilder table = Table.named("t").columns(Column.decimal("b", "B", 1), Column.date("d", "D"));
        table.row().put("b", BigDecimal.ONE).put("d", Cell.of(LocalDate.of(2026, 3, 12)));
        Report report = Report.named("list", "List")
                .in(language)
                .page(Page.named("One").add(table))
                .build();
        assertThat(Opened.of(report).find("xl/styles.xml", "//numFmt/@formatCode"))
                .containsExactlyInAnyOrder(locale + "0.0_.", "yyyy\\-mm\\-dd");
    }

    @Test
    void a_page_in_another_language_than_the_report_has_its_own_decimal_sign_and_colon() {
        TableBuilder table = Table.named("t").columns(Column.decimal("b", "B", 1));
        table.row().put("b", BigDecimal.ONE);
        PageBuilder french = Page.named("Deux").in("fr").add(table).caution("Attention", "Lourd.");
        Report report = Report.named("list", "List")
                .page(Page.named("One").add(table).caution("Caution", "Heavy."))
                .page(french)
                .build();
        Opened opened = Opened.of(report);
        assertThat(opened.find("xl/styles.xml", "//numFmt/@formatCode"))
                .containsExactlyInAnyOrder("0.0_.", "[$-40C]0.0_.");
        assertThat(opened.find(SECOND, "//t").toString()).contains("Attention\u00A0: ");
        assertThat(opened.find(FIRST, "//t").toString()).contains("Caution: ");
    }

    @Test
    void a_page_stands_upright_unless_it_is_turned() {
        Opened opened = Opened.of(WorkedExample.workbook());
        assertThat(opened.find(FIRST, "//pageSetup/@orientation")).containsExactly("portrait");
        assertThat(opened.find(SECOND, "//pageSetup/@orientation")).containsExactly("landscape");
    }

    @Test
    void each_sheet_says_which_page_it_is_of_how_many_in_its_own_language() {
        PageBuilder german = Page.named("Eins")
                .title("Eins")
                .print(PrintSetup.PORTRAIT.withCount(new PageCount("Seite ", " von ")))
                .footer("Schrauben & Muttern");
        Opened opened = Opened.of(Report.named("list", "List").page(german).build());
        assertThat(opened.find(FIRST, "//oddFooter")).containsExactly("&L&8 Schrauben && Muttern&R&8 Seite &P von &N");
        assertThat(Opened.of(WorkedExample.workbook()).find(FIRST, "//oddFooter"))
                .allMatch(footer -> footer.endsWith("Page &P of &N"));
    }

    @Nested
    class The_heading_row {

        @Test
        void is_repeated_on_every_sheet_and_stays_in_view_with_the_columns_that_were_asked_for() {
            Opened opened = Opened.of(BulkExample.workbooks().get(0));
            assertThat(opened.find(BOOK, "//definedName[@name='_xlnm.Print_Titles' and @localSheetId='1']"))
                    .containsExactly("Bill!$1:$1");
            assertThat(opened.find(SECOND, "//pane/@ySplit")).containsExactly("1.0");
            assertThat(opened.find(SECOND, "//pane/@xSplit")).containsExactly("3.0");
            assertThat(opened.find(SECOND, "//pane/@topLeftCell")).containsExactly("D2");
        }

        @Test
        void is_not_repeated_where_no_table_runs_over() {
            assertThat(titlesWithTablesOf(30, 20)).isEmpty();
        }

        @Test
        void is_repeated_of_the_table_that_runs_over() {
            assertThat(titlesWithTablesOf(90, 20)).containsExactly("One!$1:$1");
            assertThat(titlesWithTablesOf(20, 90)).containsExactly("One!$23:$23");
        }

        /** A small screen is 1280 dots wide and 800 high; what stays in view leaves most of it to the rows. */
        @Test
        void stays_in_view_only_where_all_above_it_takes_a_quarter_of_a_small_screen_at_most() {
            assertThat(headedBy(6).find(FIRST, "//pane/@ySplit")).containsExactly("13.0");
            assertThat(headedBy(7).find(FIRST, "//pane")).isEmpty();
        }

        private Opened headedBy(int headings) {
            PageBuilder page = Page.named("One");
            for (int i = 0; i < headings; i++) {
                page.heading("Heading " + i);
            }
            return Opened.of(Report.named("list", "List")
                    .page(page.add(list("list", 3, 3)))
                    .build());
        }

        @Test
        void keeps_only_as_many_columns_in_view_as_fit_half_of_a_small_screen() {
            TableBuilder table = Table.named("list")
                    .columns(
                            Column.text("a", "A").atMost(80),
                            Column.text("b", "B").atMost(80),
                            Column.text("c", "C"));
            table.row()
                    .put("a", "long ".repeat(12))
                    .put("b", "long ".repeat(12))
                    .put("c", "c");
            PageBuilder page = Page.named("One").landscape().add(table).frozen(2);
            assertThat(Opened.of(Report.named("list", "List").page(page).build())
                            .find(FIRST, "//pane/@xSplit"))
                    .containsExactly("1.0");
        }

        private Iterable<String> titlesWithTablesOf(int first, int second) {
            PageBuilder page = Page.named("One").add(list("first", 4, first)).add(list("second", 2, second));
            Opened opened = Opened.of(Report.named("list", "List").page(page).build());
            return opened.find(BOOK, "//definedName[@name='_xlnm.Print_Titles']");
        }
    }

    /** As wide as its columns, so that no edge of the printed page can cut it, whatever the typeface makes of them. */
    @Test
    void a_drawing_wider_than_the_page_ends_within_its_last_column_and_says_what_it_shows() {
        Drawing wide = new Drawing(400, 40, "Two rails & a hook", List.of());
        Opened opened = Opened.of(Report.named("plan", "Plan")
                .page(Page.named("One").picture(wide).add(list("list", 4, 3)))
                .build());
        int last = opened.find(FIRST, "//cols/col").size() - 1;
        String drawing = "xl/drawings/drawing1.xml";
        assertThat(opened.find(drawing, "//*[local-name()='to']/*[local-name()='col']"))
                .containsExactly(String.valueOf(last));
        assertThat(opened.find(drawing, "//@descr")).containsExactly("Two rails & a hook");
    }

    /** What a picture keeps clear of the row above it, less than a point, it may take of the gap below. A row is 409 points high at the most (Excel specifications and limits, from memory); a point is 12700 EMU. */
    @Test
    void a_drawing_is_no_higher_than_the_row_that_holds_its_place() {
        Drawing label = new Drawing(169, 132, "Two labels", List.of());
        TableBuilder wide = Table.named("wide");
        for (int i = 0; i < 14; i++) {
            wide.columns(Column.text("c" + i, "A rather long heading " + i).atMost(14));
        }
        wide.row().put("c0", "A crate with words ".repeat(3));
        Opened opened = Opened.of(Report.named("plan", "Plan")
                .page(Page.named("One").picture(label).picture(label).add(wide))
                .build());
        double highest = opened.find(FIRST, "//row/@ht").stream()
                .mapToDouble(Double::parseDouble)
                .max()
                .orElseThrow();
        assertThat(opened.find("xl/drawings/drawing1.xml", "//*[local-name()='to']/*[local-name()='rowOff']"))
                .isNotEmpty()
                .allSatisfy(high -> assertThat(Long.parseLong(high) / 12700.0).isLessThanOrEqualTo(highest + 0.8));
    }

    private static TableBuilder list(String name, int columns, int rows) {
        TableBuilder table = Table.named(name);
        for (int i = 0; i < columns; i++) {
            table.columns(Column.text("c" + i, "Column " + i));
        }
        for (int i = 0; i < rows; i++) {
            table.row().put("c0", "Part " + i);
        }
        return table;
    }
}
