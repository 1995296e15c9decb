package boltlore.report.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.BulkExample;
import boltlore.report.Page;
import boltlore.report.Report;
import boltlore.report.WorkedExample;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlOptions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class XlsxReadBackTest {

    static Stream<Report> workbooks() {
        return Stream.concat(Stream.of(WorkedExample.workbook()), BulkExample.workbooks().stream());
    }

    @ParameterizedTest
    @MethodSource("workbooks")
    @DisplayName("Another reader finds every cell, formula cells with the core's own result")
    void another_reader_finds_every_cell(Report report) throws IOException {
        List<List<ReadBack.ReadCell>> sheets = ReadBack.sheets(Opened.bytes(report));
        assertThat(sheets).hasSameSizeAs(report.pages());
        for (int i = 0; i < sheets.size(); i++) {
            assertThat(sheets.get(i).stream().map(ReadBack.ReadCell::value))
                    .containsExactlyElementsOf(CellsInOrder.of(report.pages().get(i)));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"})
    void text_that_looks_like_a_formula_is_text_and_stays_so_when_someone_edits_it(String text) throws IOException {
        XSSFCell cell = firstCell(text);
        assertThat(cell.getCellType()).isEqualTo(org.apache.poi.ss.usermodel.CellType.STRING);
        assertThat(cell.getCellStyle().getQuotePrefixed()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"1=1", "B-100", " =1", "a@b"})
    void text_that_only_holds_such_a_character_is_not_marked(String text) throws IOException {
        assertThat(firstCell(text).getCellStyle().getQuotePrefixed()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\u0000b", "a\u0001b", "a\u001bb", "a\uD800b", "a\uFFFEb", "a\u000Bb", "a\rb"})
    void a_character_that_xml_forbids_does_not_break_the_file(String text) throws IOException {
        assertThat(firstCell(text).getStringCellValue()).isEqualTo("a\uFFFDb");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a<b>&\"'c", "two\nlines", "_x0041_", "é 漢 \uD83D\uDE9A", "  blanks  "})
    void every_other_character_comes_back_as_it_was(String text) throws IOException {
        assertThat(firstCell(text).getStringCellValue()).isEqualTo(text);
    }

    /** ECMA-376 part 1, annex A, as XmlBeans has compiled it: which elements there are, in which order, with what values. */
    @ParameterizedTest
    @MethodSource("workbooks")
    void every_sheet_and_the_styles_are_as_the_standard_s_schema_wants_them(Report report) throws IOException {
        List<XmlError> errors = new ArrayList<>();
        XmlOptions into = new XmlOptions().setErrorListener(errors);
        try (XSSFWorkbook read = read(report)) {
            read.getStylesSource().getCTStylesheet().validate(into);
            read.getCTWorkbook().validate(into);
            read.sheetIterator()
                    .forEachRemaining(
                            sheet -> ((XSSFSheet) sheet).getCTWorksheet().validate(into));
        }
        // XML's own attribute for blanks, which the schema does not name and every program writes.
        errors.removeIf(error -> error.getMessage().contains("space@http://www.w3.org/XML/1998/namespace"));
        assertThat(errors).isEmpty();
    }

    @Test
    void cells_of_one_look_share_one_style() throws IOException {
        try (XSSFWorkbook read = read(BulkExample.workbooks().get(0))) {
            assertThat(read.getNumCellStyles()).isLessThan(40);
        }
    }

    @Test
    void a_page_name_from_a_catalogue_becomes_a_name_that_a_sheet_may_bear() throws IOException {
        Report report = Report.named("list", "List")
                .page(Page.named("Bag 1/2: [front]?*\\ and a very long tail of words")
                        .title("a"))
                .page(Page.named("Bag 1/2: [front]?*\\ and a very long tail of signs")
                        .title("b"))
                .page(Page.named("History").title("c"))
                .page(Page.named("'quoted'").title("d"))
                .build();
        try (XSSFWorkbook read = read(report)) {
            Iterable<String> names =
                    Stream.of(0, 1, 2, 3).map(read::getSheetName).toList();
            assertThat(names)
                    .containsExactly(
                            "Bag … a very long tail of words",
                            "Bag … a very long tail of signs",
                            "History (2)",
                            "-quoted-");
        }
    }

    /** Each name of at most 31 characters, which is all that a tab takes, and none that reads as another size. */
    @Test
    void a_long_page_name_loses_whole_words_from_its_middle_never_the_end_of_a_size() throws IOException {
        Report report = Report.named("list", "List")
                .page(Page.named("Steel tube S235 round, 30 x 3 mm").title("a"))
                .page(Page.named("Steel tube S235 square, 40 x 40 x 3 mm").title("b"))
                .page(Page.named("Steel flat bar S235, 40 x 5 mm").title("c"))
                .page(Page.named("Donaudampfschifffahrtsgesellschaftskapitän").title("d"))
                .build();
        try (XSSFWorkbook read = read(report)) {
            assertThat(Stream.of(0, 1, 2, 3).map(read::getSheetName))
                    .containsExactly(
                            "Steel tube S235 round, 30x3 mm",
                            "Steel … S235 square, 40x40x3 mm",
                            "Steel flat bar S235, 40 x 5 mm",
                            "…hifffahrtsgesellschaftskapitän");
        }
    }

    private static XSSFCell firstCell(String text) throws IOException {
        Report report = Report.named("list", "List")
                .page(Page.named("One").heading(text))
                .build();
        try (XSSFWorkbook read = read(report)) {
            XSSFSheet sheet = read.getSheetAt(0);
            return sheet.getRow(0).getCell(0);
        }
    }

    private static XSSFWorkbook read(Report report) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(Opened.bytes(report)));
    }
}
