package boltlore.report.csv;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.Particulars;
import boltlore.report.Report;
import boltlore.report.SheetFile;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.report.WorkedExample;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Currency;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvWriterTest {

    @Test
    void what_would_steer_a_terminal_never_comes_through() {
        assertThat(field("\u001B[31mEvil\u0007\u202E")).isEqualTo("\uFFFD[31mEvil\uFFFD\uFFFD");
        assertThat(field("Käserei, 2. Stock")).isEqualTo("\"Käserei, 2. Stock\"");
    }

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
        TableBuilder table = Table.named("list").columns(Column.text("a", "A"), Column.text("b", "B"));
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
            assertThat(parser.getRecords().get(1).toList())
                    .containsExactly("BL-1", "a; b, \"c\" / d\te|f", "1;'-2", "-2.5");
        }
    }

    private static String csv(TableBuilder table) {
        return new String(CsvWriter.bytes("BL-1", List.of(table.build())), StandardCharsets.UTF_8);
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
        assertThat(new String(CsvWriter.bytes("BL-1", List.of(table.build())), StandardCharsets.UTF_8))
                .isEqualTo("subject,kg\r\nBL-1,-2.5\r\n");
    }

    /** RFC 4180, section 2, rules 6 and 7. */
    @Test
    void commas_quotes_and_line_breaks_stand_in_quotes_and_quotes_are_doubled() {
        assertThat(field("a,b")).isEqualTo("\"a,b\"");
        assertThat(field("6\" pipe")).isEqualTo("\"6\"\" pipe\"");
        assertThat(field("two\nlines")).isEqualTo("\"two\nlines\"");
    }

    @Test
    void rows_of_groups_and_totals_stay_out_and_each_row_says_its_group() {
        List<String> lines = lines("bill-bill.csv");
        assertThat(lines.get(0)).startsWith("subject,group,part,name,");
        assertThat(lines).hasSizeGreaterThan(3).noneMatch(line -> line.contains("Sub-total"));
        assertThat(lines.get(1)).contains(",Drive unit,DU-100,\"Drive unit, 80 kW, with reduction gear\",buy,1.00,");
        assertThat(lines.get(lines.size() - 1)).doesNotContain("6384.14");
    }

    @Test
    void columns_are_named_in_english_by_their_keys_with_the_unit() {
        assertThat(CsvWriter.heading(Column.decimal("fuse-amps", "Sicherung", 0).in("A")))
                .isEqualTo("fuse amps (A)");
        assertThat(CsvWriter.heading(Column.text("unitCost", "Stückkosten"))).isEqualTo("unit cost");
    }

    @Test
    void a_number_has_the_digits_that_are_known_and_no_cell_breaks_a_line() {
        TableBuilder table = Table.named("list").columns(Column.decimal("kw", "Power", 1), Column.text("says", "Says"));
        table.row().put("kw", new BigDecimal("3.557959154628904860172205")).put("says", "two\nlines");
        assertThat(csv(table)).isEqualTo("subject,kw,says\r\nBL-1,3.557959,two / lines\r\n");
    }

    @Test
    void where_a_line_ends_with_a_comma_the_comma_parts_and_blanks_that_hold_words_together_are_plain() {
        TableBuilder table = Table.named("list").columns(Column.text("says", "Says"));
        table.row().put("says", "BL-1\u00A01,\nBL-2\u00A03");
        assertThat(csv(table)).isEqualTo("subject,says\r\nBL-1,\"BL-1 1, BL-2 3\"\r\n");
    }

    @Test
    void tables_of_one_name_on_two_pages_are_one_file_with_what_sets_them_apart() {
        Report report = Report.named("picking", "Picking list")
                .page(Page.named("Front").add(bag("front")))
                .page(Page.named("Rear").add(bag("rear")))
                .build();
        SheetFile only = new CsvWriter().write(report).get(0);
        assertThat(only.name()).isEqualTo("picking-bag.csv");
        assertThat(new String(only.content(), StandardCharsets.UTF_8))
                .isEqualTo("subject,bag,part\r\n,front,P\r\n,rear,P\r\n");
    }

    @Test
    void single_values_and_totals_stand_in_a_file_of_facts_with_their_units() {
        TableBuilder table =
                Table.named("price").columns(Column.money("amount", "Amount", Currency.getInstance("AUD")));
        table.row().put("amount", new BigDecimal("-2.50"));
        table.total("total", "Total").sum("amount", new BigDecimal("-2.50"));
        Report report = Report.named("quotation", "Quotation")
                .about("BL-1")
                .page(Page.named("One")
                        .add(Particulars.named("head")
                                .say("added", "Added", Kind.decimal(1).in("kg"), BigDecimal.TEN))
                        .add(table))
                .build();
        SheetFile facts = new CsvWriter().write(report).get(1);
        assertThat(facts.name()).isEqualTo("quotation-facts.csv");
        assertThat(new String(facts.content(), StandardCharsets.UTF_8)).isEqualTo("""
                        subject,fact,says,value,unit\r
                        BL-1,added,Added,10,kg\r
                        BL-1,price.total.amount,"Total, Amount",-2.5,AUD\r
                        """);
    }

    @Test
    void a_code_is_a_column_behind_the_words() {
        TableBuilder table = Table.named("list").columns(Column.text("finish", "Finish"));
        table.row().put("finish", "Deep green").code("finishId", "green-gloss");
        assertThat(csv(table)).isEqualTo("subject,finish,finish id\r\nBL-1,Deep green,green-gloss\r\n");
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
        return CsvField.encode(text);
    }

    private static TableBuilder bag(String name) {
        TableBuilder table = Table.named("bag").about("bag", name).columns(Column.text("part", "Part"));
        table.row().put("part", "P");
        return table;
    }

    private static List<String> lines(String file) {
        return new CsvWriter()
                .write(WorkedExample.workbook()).stream()
                        .filter(each -> each.name().equals(file))
                        .flatMap(each -> new String(each.content(), StandardCharsets.UTF_8).lines())
                        .toList();
    }
}
