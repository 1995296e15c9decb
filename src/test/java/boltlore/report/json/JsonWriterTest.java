package boltlore.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.Page;
import boltlore.report.Workbook;
import boltlore.report.WorkedExample;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class JsonWriterTest {

    @Test
    void another_reader_finds_every_cell_with_its_exact_decimals() throws IOException {
        JsonNode row = read(WorkedExample.workbook()).at("/pages/1/blocks/1/rows/6");
        assertThat(row.at("/row").asText()).isEqualTo("plain");
        assertThat(row.at("/group").asText()).isEqualTo("battery");
        assertThat(row.at("/cells/unitCost").isTextual()).isTrue();
        assertThat(row.at("/cells/unitCost").asText()).isEqualTo("655.00");
        assertThat(row.at("/cells/picked").isNull()).isTrue();
    }

    @Test
    void a_formula_cell_gives_the_result_that_the_core_has_computed() throws IOException {
        JsonNode rows = read(WorkedExample.workbook()).at("/pages/1/blocks/1/rows");
        assertThat(rows.get(rows.size() - 1).at("/cells/cost").asText()).isEqualTo("6384.14");
    }

    @Test
    void any_text_comes_back_as_it_was() throws IOException {
        String text = "quote \" back \\ bell \u0007 line\n tab\t é 漢 \uD83D\uDE9A lone \uD800 end";
        Workbook workbook =
                Workbook.of("list", "List").page(Page.named("One").title(text)).build();
        assertThat(read(workbook).at("/pages/0/blocks/0/title").asText()).isEqualTo(text);
    }

    @Test
    void two_runs_give_the_same_text() {
        assertThat(JsonWriter.bytes(WorkedExample.workbook())).isEqualTo(JsonWriter.bytes(WorkedExample.workbook()));
    }

    private static JsonNode read(Workbook workbook) throws IOException {
        return new ObjectMapper().readTree(JsonWriter.bytes(workbook));
    }
}
