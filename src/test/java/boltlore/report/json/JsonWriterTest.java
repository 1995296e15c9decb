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
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
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
    void a_number_is_a_number_with_the_digits_of_the_sheet() throws IOException {
        TableBuilder table = Table.named("t").columns(Column.decimal("kw", "Power", 1));
        table.row().put("kw", new BigDecimal("11.04"));
        JsonNode power = read(of(table)).at("/tables/t/0/kw");
        assertThat(power.isNumber()).isTrue();
        assertThat(power.asText()).isEqualTo("11.0");
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
