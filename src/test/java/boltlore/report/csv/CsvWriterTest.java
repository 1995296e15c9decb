package boltlore.report.csv;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.SheetFile;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.report.Workbook;
import boltlore.report.WorkedExample;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvWriterTest {

    /** The characters are those of OWASP's page 'CSV Injection'. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "\n=1",
                "\uFF1D1",
                "\uFF0B1",
                "\uFF0D1",
                "\uFF201"
            })
    void text_that_a_spreadsheet_would_take_for_a_formula_gets_an_apostrophe(String text) {
        assertThat(field(text)).startsWith(text.strip().equals(text) ? "'" + text : "\"'");
    }

    /** Read by another reader, with what parts cells where a decimal comma is used, in lists of columns and in pipes. */
    @ParameterizedTest
    @ValueSource(chars = {',', ';', '\t', '|'})
    void no_cell_begins_like_a_formula_whatever_parts_the_cells(char separator) throws IOException {
        List<String> texts = List.of(
                "x;=1+1;y",
                "x\t=1+1\ty",
                "x|=1+1",
                "x\n=1+1",
                "x\r\n@A1",
                ";+1",
                ";;-1",
                "\"=1+1\"",
                "a,\";=1+1;\"",
                "x;\uFF1D1+1",
                "=1;=1",
                "\t=1");
        TableBuilder table = Table.named("list").columns(Column.text("a", "A;=1"), Column.text("b", "B"));
        texts.forEach(text -> table.row().put("a", text).put("b", text));

        for (String line : csv(table).split("\r\n|\r|\n", -1)) {
            for (String cell : line.split(Pattern.quote(String.valueOf(separator)), -1)) {
                // With quotation marks heeded or not.
                assertThat(cell).doesNotMatch(LIKE_A_FORMULA);
                if (separator != ',') {
                    assertThat(cell.replace("\"", "")).doesNotMatch(LIKE_A_FORMULA);
                }
            }
        }
        CSVFormat lenient = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setTrailingData(true)
                .setLenientEof(true)
                .get();
        try (CSVParser parser = CSVParser.parse(csv(table), lenient)) {
            parser.forEach(row -> row.forEach(cell -> assertThat(cell).doesNotMatch(LIKE_A_FORMULA)));
        }
    }

    private static final Pattern LIKE_A_FORMULA =
            Pattern.compile("[=+\\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20].*", Pattern.DOTALL);

    /** What was written comes back, but for the apostrophes. */
    @Test
    void another_reader_reads_back_what_was_written() throws IOException {
        TableBuilder table = Table.named("list")
                .columns(Column.text("words", "Words"), Column.text("list", "List"), Column.decimal("kg", "Mass", 1));
        table.row().put("words", "a; b, \"c\"\nd\te|f").put("list", "1;-2").put("kg", new BigDecimal("-2.5"));

        try (CSVParser parser = CSVParser.parse(csv(table), CSVFormat.RFC4180)) {
            assertThat(parser.getRecords().get(1).toList()).containsExactly("a; b, \"c\"\nd\te|f", "1;'-2", "-2.5");
        }
    }

    private static String csv(TableBuilder table) {
        return new String(CsvWriter.bytes(table.build()), StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1=1", "a+b", "B-100", "a@b", " =1"})
    void text_that_only_holds_such_a_character_stays_as_it_is(String text) {
        assertThat(field(text)).isEqualTo(text);
    }

    @Test
    void a_negative_number_is_a_number() {
        TableBuilder table = Table.named("list").columns(Column.decimal("kg", "Mass", 1));
        table.row().put("kg", new BigDecimal("-2.50"));
        assertThat(new String(CsvWriter.bytes(table.build()), StandardCharsets.UTF_8))
                .isEqualTo("Mass\r\n-2.50\r\n");
    }

    /** RFC 4180, section 2, rules 6 and 7. */
    @Test
    void commas_quotes_and_line_breaks_stand_in_quotes_and_quotes_are_doubled() {
        assertThat(field("a,b")).isEqualTo("\"a,b\"");
        assertThat(field("6\" pipe")).isEqualTo("\"6\"\" pipe\"");
        assertThat(field("two\nlines")).isEqualTo("\"two\nlines\"");
    }

    @Test
    void a_table_with_sub_totals_says_what_each_row_is_and_of_which_group() {
        List<String> lines = lines("bill-bill.csv");
        assertThat(lines.get(0)).startsWith("Row,Group,Part number,Name,");
        assertThat(lines.get(1)).startsWith("group,Drive unit,");
        assertThat(lines.get(2)).startsWith("row,Drive unit,DU-100,\"Drive unit, 80 kW, with reduction gear\",buy,1,");
        assertThat(lines.get(lines.size() - 1)).startsWith("total,Kit,").contains(",6384.14,");
    }

    @Test
    void a_plain_table_has_its_columns_only() {
        TableBuilder table = Table.named("list").columns(Column.text("part", "Part"));
        table.row().put("part", "B-100");
        assertThat(new String(CsvWriter.bytes(table.build()), StandardCharsets.UTF_8))
                .isEqualTo("Part\r\nB-100\r\n");
    }

    @Test
    void tables_of_one_name_on_two_pages_become_two_files() {
        Workbook workbook = Workbook.of("picking", "Picking list")
                .page(Page.named("Front").add(bag()))
                .page(Page.named("Rear").add(bag()))
                .build();
        assertThat(new CsvWriter().write(workbook))
                .extracting(SheetFile::name)
                .containsExactly("picking-bag.csv", "picking-bag-2.csv");
    }

    @Test
    void two_runs_give_the_same_bytes() {
        List<SheetFile> first = new CsvWriter().write(WorkedExample.workbook());
        List<SheetFile> second = new CsvWriter().write(WorkedExample.workbook());
        assertThat(first).hasSameSizeAs(second);
        for (int i = 0; i < first.size(); i++) {
            assertThat(first.get(i).content()).isEqualTo(second.get(i).content());
        }
    }

    private static String field(String text) {
        return CsvField.of(text);
    }

    private static TableBuilder bag() {
        return Table.named("bag").columns(Column.text("part", "Part"));
    }

    private static List<String> lines(String file) {
        return new CsvWriter()
                .write(WorkedExample.workbook()).stream()
                        .filter(each -> each.name().equals(file))
                        .flatMap(each -> new String(each.content(), StandardCharsets.UTF_8).lines())
                        .toList();
    }
}
