package boltlore.report.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.Report;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import org.apache.poi.ss.usermodel.DataValidationConstraint.ValidationType;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What a spreadsheet program can do with a sheet beside showing it: filter, call by name, help to fill in. */
class XlsxTableTest {

    private static final String FIRST = "xl/worksheets/sheet1.xml";

    @Nested
    class A_plain_table {

        @Test
        void is_a_table_to_the_program_with_its_own_name_and_the_headings_that_its_cells_hold() throws IOException {
            XSSFTable table = only(page("One", list("oven-loads", 8)));
            assertThat(table.getName()).isEqualTo("oven_loads");
            assertThat(table.getCellReferences().formatAsString()).isEqualTo("A1:C9");
            assertThat(table.getColumns())
                    .extracting(column -> column.getName())
                    .containsExactly("Part", "Mass (kg)", "Hung");
        }

        @Test
        void can_be_filtered_where_it_is_long() throws IOException {
            assertThat(only(page("One", list("loads", 6)))
                            .getCTTable()
                            .getAutoFilter()
                            .getRef())
                    .isEqualTo("A1:C7");
            assertThat(only(page("One", list("loads", 5))).getCTTable().isSetAutoFilter())
                    .isFalse();
        }

        @Test
        void says_its_page_in_its_name_where_another_page_has_one_of_that_name() throws IOException {
            XSSFWorkbook book = read(page("Batch 1", list("loads", 2)), page("Batch 2", list("loads", 2)));
            assertThat(book.getSheetAt(0).getTables().get(0).getName()).isEqualTo("loads_Batch_1");
            assertThat(book.getSheetAt(1).getTables().get(0).getName()).isEqualTo("loads_Batch_2");
        }

        @Test
        void never_bears_a_name_that_a_cell_bears() throws IOException {
            assertThat(only(page("One", list("bag12", 2))).getName()).isEqualTo("_bag12");
            assertThat(only(page("One", list("2-coats", 2))).getName()).isEqualTo("_2_coats");
            assertThat(only(page("One", list("bags12", 2))).getName()).isEqualTo("bags12");
        }

        @Test
        void is_none_where_two_headings_read_the_same() throws IOException {
            TableBuilder table = Table.named("loads").columns(Column.text("a", "Mark"), Column.text("b", "mark"));
            table.row().put("a", "x");
            assertThat(sheet(page("One", table)).getTables()).isEmpty();
        }
    }

    @Test
    void a_long_table_with_groups_and_sums_can_be_filtered_down_to_its_last_plain_row() {
        Opened opened = opened(page("One", grouped(3)));
        assertThat(opened.names()).noneMatch(name -> name.startsWith("xl/tables/"));
        assertThat(opened.find(FIRST, "//autoFilter/@ref")).containsExactly("A1:C10");
        assertThat(opened.find("xl/workbook.xml", "//@hidden")).isEmpty();
    }

    @Test
    void a_short_table_with_groups_has_no_filter() {
        assertThat(opened(page("One", grouped(1))).find(FIRST, "//autoFilter")).isEmpty();
    }

    @Test
    void a_second_table_whose_cells_span_columns_is_left_as_it_is() throws IOException {
        TableBuilder wide = Table.named("wide").columns(Column.text("t", "What is to be looked at"));
        wide.row().put("t", "A text that takes more room than the first column of the other table has to give");
        XSSFSheet sheet = sheet(page("One", list("loads", 9)).add(wide));
        assertThat(sheet.getTables()).extracting(XSSFTable::getName).containsExactly("loads");
    }

    @Test
    void a_number_that_stands_alone_can_be_called_by_name_and_a_text_cannot() throws IOException {
        PageBuilder page = Page.named("Sum of it's")
                .add(Particulars.named("price")
                        .say("cost", "Cost", Kind.decimal(2), new BigDecimal("12.50"))
                        .say("currency", "Currency", "EUR"));
        XSSFWorkbook book = read(page);
        assertThat(book.getAllNames())
                .extracting(name -> name.getNameName())
                .containsExactly("_xlnm.Print_Area", "price_cost");
        assertThat(book.getName("price_cost").getRefersToFormula()).startsWith("'Sum of it''s'!$");
    }

    @Nested
    class A_box {

        @Test
        void for_a_tick_offers_the_tick() throws IOException {
            XSSFDataValidation ticks =
                    sheet(page("One", list("loads", 3))).getDataValidations().get(0);
            assertThat(ticks.getValidationConstraint().getExplicitListValues()).containsExactly("\u2713");
            assertThat(ticks.getRegions().getCellRangeAddress(0).formatAsString())
                    .isEqualTo("C2:C4");
        }

        @Test
        void with_a_closed_set_of_answers_offers_them_and_one_for_anything_does_not() throws IOException {
            TableBuilder table = Table.named("held")
                    .columns(
                            new Column("decision", "Decision", Kind.blank().oneOf("Left out", "Kept")),
                            Column.blank("why", "Why"));
            table.row();
            List<XSSFDataValidation> all = sheet(page("One", table)).getDataValidations();
            assertThat(all).hasSize(1);
            assertThat(all.get(0).getValidationConstraint().getExplicitListValues())
                    .containsExactly("Left out", "Kept");
        }

        @Test
        void for_a_date_wants_one_and_shows_it_as_dates_are_shown() throws IOException {
            XSSFSheet sheet = sheet(Page.named("One")
                    .add(Particulars.named("gauge")
                            .add("until", "Until", Kind.blank().day(), Cell.EMPTY))
                    .signatures("Checked by"));
            XSSFDataValidation dates = sheet.getDataValidations().get(0);
            assertThat(dates.getValidationConstraint().getValidationType()).isEqualTo(ValidationType.DATE);
            assertThat(dates.getRegions().countRanges()).isEqualTo(2);
            for (var range : dates.getRegions().getCellRangeAddresses()) {
                assertThat(sheet.getRow(range.getFirstRow())
                                .getCell(range.getFirstColumn())
                                .getCellStyle()
                                .getDataFormatString())
                        .isEqualTo("yyyy\\-mm\\-dd");
            }
        }

        @Test
        void in_a_group_or_sum_row_is_none() throws IOException {
            XSSFDataValidation ticks =
                    sheet(page("One", grouped(2))).getDataValidations().get(0);
            assertThat(ticks.getRegions().getCellRangeAddresses())
                    .extracting(range -> range.formatAsString())
                    .containsExactly("C3:C4", "C6:C7");
        }
    }

    private static PageBuilder page(String name, TableBuilder table) {
        return Page.named(name).add(table);
    }

    private static TableBuilder columns(String name) {
        return Table.named(name)
                .columns(
                        Column.text("part", "Part"),
                        Column.decimal("mass", "Mass", 1).in("kg"),
                        Column.tick("hung", "Hung"));
    }

    private static TableBuilder list(String name, int rows) {
        TableBuilder table = columns(name);
        for (int i = 0; i < rows; i++) {
            table.row().put("part", "Part " + i).put("mass", BigDecimal.ONE);
        }
        return table;
    }

    /** Groups of two rows each, and a sum of all. */
    private static TableBuilder grouped(int groups) {
        TableBuilder table = columns("groups");
        for (int group = 0; group < groups; group++) {
            table.group("g" + group, "Group " + group);
            table.row().put("part", "a").put("mass", BigDecimal.ONE);
            table.row().put("part", "b").put("mass", BigDecimal.ONE);
        }
        table.total("all", "All").sum("mass", new BigDecimal(2 * groups));
        return table;
    }

    private static Opened opened(PageBuilder page) {
        return Opened.of(Report.named("list", "List").page(page).build());
    }

    private static XSSFTable only(PageBuilder page) throws IOException {
        List<XSSFTable> tables = sheet(page).getTables();
        assertThat(tables).hasSize(1);
        return tables.get(0);
    }

    private static XSSFSheet sheet(PageBuilder page) throws IOException {
        return read(page).getSheetAt(0);
    }

    private static XSSFWorkbook read(PageBuilder... pages) throws IOException {
        var book = Report.named("list", "List");
        for (PageBuilder page : pages) {
            book.page(page);
        }
        return new XSSFWorkbook(new ByteArrayInputStream(Opened.bytes(book.build())));
    }
}
