package boltlore.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Report;
import boltlore.report.SheetFile;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.report.WorkedExample;
import boltlore.report.text.TextWriter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Currency;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A report as JSON, read back by another reader")
class JsonWriterTest {

    private static JsonNode read(Report report) throws IOException {
        return new ObjectMapper().readTree(bytes(report));
    }

    private static byte[] bytes(Report report) {
        SheetFile only = new JsonWriter().write(report).get(0);
        return only.content();
    }

    private static Report of(TableBuilder... tables) {
        PageBuilder page = Page.named("One");
        for (TableBuilder table : tables) {
            page.add(table);
        }
        return Report.named("list", "List").page(page).build();
    }

    @Test
    void any_text_comes_back_as_it_was() throws IOException {
        String text = "quote \" back \\ bell \u0007 line\n tab\t é 漢 \uD83D\uDE9A end";
        TableBuilder table = Table.named("t").columns(Column.text("says", "Says"));
        table.row().put("says", text);
        assertThat(read(of(table)).at("/tables/t/0/says").asText()).isEqualTo(text);
    }

    @Test
    void a_number_is_a_number_with_all_digits_that_are_known() throws IOException {
        TableBuilder table = Table.named("t").columns(Column.decimal("kw", "Power", 1));
        table.row().put("kw", new BigDecimal("11.04"));
        JsonNode power = read(of(table)).at("/tables/t/0/kw");
        assertThat(power.isNumber()).isTrue();
        assertThat(power.asText()).isEqualTo("11.04");
    }

    @Test
    void rows_add_up_to_their_total_though_they_are_printed_with_fewer_digits() throws IOException {
        TableBuilder table =
                Table.named("t").columns(Column.decimal("mass", "Mass", 2).in("kg"));
        for (int i = 0; i < 8; i++) {
            table.row().put("mass", new BigDecimal("0.0011"));
        }
        table.total("kit", "Kit").sum("mass", new BigDecimal("0.0088"));
        JsonNode report = read(of(table));
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode row : report.at("/tables/t")) {
            sum = sum.add(new BigDecimal(row.get("mass").asText()));
        }
        JsonNode total = report.at("/facts").get("t.kit.mass");
        assertThat(sum).isEqualByComparingTo(total.get("value").asText());
        assertThat(total.get("unit").asText()).isEqualTo("kg");
    }

    @Test
    void digits_that_a_division_leaves_end_after_the_sixth() throws IOException {
        TableBuilder table = Table.named("t").columns(Column.quantity("n", "Number"));
        table.row().put("n", new BigDecimal("151.398229715025712"));
        table.row().put("n", new BigDecimal("0.000123456789"));
        table.row().put("n", new BigDecimal("0.0000000000000000000000000001"));
        assertThat(read(of(table)).at("/tables/t").findValues("n"))
                .extracting(node -> node.decimalValue().stripTrailingZeros().toPlainString())
                .containsExactly("151.39823", "0.000123", "0");
    }

    @Test
    void each_column_says_its_heading_and_unit_and_an_amount_its_currency() throws IOException {
        TableBuilder table = Table.named("t")
                .columns(
                        Column.decimal("mass", "Masse", 2).in("kg"),
                        Column.money("cost", "Kosten", Currency.getInstance("AUD")),
                        Column.tick("seen", "Gesehen"));
        JsonNode columns = read(of(table)).at("/columns/t");
        assertThat(columns.at("/mass/unit").asText()).isEqualTo("kg");
        assertThat(columns.at("/cost/unit").asText()).isEqualTo("AUD");
        assertThat(columns.at("/cost/says").asText()).isEqualTo("Kosten");
        assertThat(columns.has("seen")).isFalse();
    }

    @Test
    void a_code_stands_beside_the_words_and_is_printed_nowhere() throws IOException {
        TableBuilder table = Table.named("t").columns(Column.text("finish", "Finish"));
        table.row().put("finish", "Deep green").code("finishId", "green-gloss");
        Report report = of(table);
        assertThat(read(report).at("/tables/t/0/finishId").asText()).isEqualTo("green-gloss");
        assertThat(new TextWriter(80).text(report)).contains("Deep green").doesNotContain("green-gloss");
    }

    @Test
    void cautions_are_told_with_their_codes_notes_with_their_keys_and_each_once() throws IOException {
        PageBuilder one = Page.named("One")
                .heading("Price")
                .note("validity", "Valid until tomorrow.")
                .caution("lithium", "Caution", "Batteries burn.");
        PageBuilder two = Page.named("Two").caution("lithium", "Caution", "Batteries burn.");
        JsonNode words =
                read(Report.named("list", "List").page(one).page(two).build()).get("words");
        assertThat(words.get("cautions")).hasSize(1);
        assertThat(words.at("/cautions/0/code").asText()).isEqualTo("lithium");
        assertThat(words.at("/notes/0/key").asText()).isEqualTo("validity");
        assertThat(words.at("/notes/0/under").asText()).isEqualTo("Price");
    }

    @Test
    void a_table_that_is_on_no_page_is_data_all_the_same() throws IOException {
        TableBuilder all = Table.named("all").columns(Column.text("part", "Part"));
        all.row().put("part", "P-1");
        Report report = Report.named("list", "List")
                .page(Page.named("One").title("One"))
                .data(all)
                .build();
        assertThat(read(report).at("/tables/all/0/part").asText()).isEqualTo("P-1");
        assertThat(new TextWriter(80).text(report)).doesNotContain("P-1");
    }

    @Test
    void group_and_total_rows_are_for_the_eye_and_stay_out() throws IOException {
        TableBuilder table = Table.named("t").columns(Column.quantity("n", "Number"));
        table.group("a", "First group").row().put("n", 2);
        table.subtotal("Sub-total").sum("n", BigDecimal.valueOf(2));
        JsonNode rows = read(of(table)).at("/tables/t");
        assertThat(rows).hasSize(1);
        assertThat(rows.get(0).get("group").asText()).isEqualTo("First group");
    }

    @Test
    void tables_of_one_name_are_one_table_with_what_sets_them_apart_as_a_column() throws IOException {
        Report report = Report.named("list", "List")
                .page(Page.named("One").add(batch("1")))
                .page(Page.named("Two").add(batch("2")))
                .build();
        assertThat(read(report).at("/tables/load").findValuesAsText("batch")).containsExactly("1", "2");
    }

    private static TableBuilder batch(String number) {
        TableBuilder table = Table.named("load").about("batch", number).columns(Column.text("part", "Part"));
        table.row().put("part", "A");
        return table;
    }

    @Test
    void boxes_for_the_pen_are_no_data() throws IOException {
        TableBuilder table = Table.named("t").columns(Column.text("a", "A"), Column.tick("seen", "Seen"));
        table.row().put("a", "x");
        assertThat(read(of(table)).at("/tables/t/0").has("seen")).isFalse();
    }

    @Test
    void two_runs_give_the_same_bytes() {
        assertThat(bytes(WorkedExample.workbook())).isEqualTo(bytes(WorkedExample.workbook()));
    }
}
