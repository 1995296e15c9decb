package boltlore.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What is written is read back by Jackson's own data binding, which the program does not use. */
@DisplayName("JSON is written the same way each time")
class JsonOutTest {

    private static JsonNode readBack(JsonOut value) throws IOException {
        return new ObjectMapper().readTree(value.written());
    }

    @Test
    void what_fits_into_a_line_stands_in_one() {
        JsonOut value = JsonOut.object().put("order", "S-1").put("lines", JsonOut.texts(List.of("a", "b")));
        assertThat(value.written()).isEqualTo("{\"order\": \"S-1\", \"lines\": [\"a\", \"b\"]}\n");
    }

    @Test
    void what_does_not_is_laid_out_with_an_indent_of_two() {
        JsonOut value = JsonOut.object()
                .put("first", "x".repeat(60))
                .put("second", JsonOut.texts(List.of("y".repeat(60), "z".repeat(60))))
                .put("third", JsonOut.object());
        assertThat(value.written()).isEqualTo("""
                        {
                          "first": "%s",
                          "second": [
                            "%s",
                            "%s"
                          ],
                          "third": {}
                        }
                        """.formatted("x".repeat(60), "y".repeat(60), "z".repeat(60)));
    }

    @Test
    void no_line_that_could_be_broken_is_longer_than_a_hundred() {
        JsonOut value = JsonOut.list(
                IntStream.range(0, 200).boxed().toList(),
                i -> JsonOut.object()
                        .put("number", i)
                        .put("name", "n".repeat(i % 50))
                        .put("list", JsonOut.texts(List.of("a".repeat(i % 30), "b"))));
        assertThat(value.written().lines()).allMatch(line -> line.length() <= 101);
    }

    @Test
    void rows_of_a_table_stand_in_a_line_each_however_long() {
        JsonOut.Members object = JsonOut.object().put("long", "x".repeat(120)).put("list", JsonOut.texts(List.of("a")));
        assertThat(JsonOut.object()
                        .put("rows", JsonOut.rows(List.of(object, JsonOut.object())))
                        .written())
                .isEqualTo("""
                        {
                          "rows": [
                            {"long": "%s", "list": ["a"]},
                            {}
                          ]
                        }
                        """.formatted("x".repeat(120)));
    }

    @Test
    void a_list_of_no_rows_takes_no_line() {
        assertThat(JsonOut.object().put("rows", JsonOut.rows(List.of())).written())
                .isEqualTo("{\"rows\": []}\n");
    }

    @Test
    void a_list_written_piece_by_piece_reads_as_one_written_whole() {
        List<JsonOut> items = IntStream.range(0, 3)
                .<JsonOut>mapToObj(i -> JsonOut.object().put("number", i).put("name", "n".repeat(30 * i + 40)))
                .toList();
        StringBuilder pieces = new StringBuilder();
        JsonOut.writeList(items.stream().map(JsonOut::writtenInList).toList(), pieces::append);
        assertThat(pieces.append('\n').toString()).isEqualTo(JsonOut.list(items).written());
    }

    @Test
    void a_list_of_nothing_is_written_so_piece_by_piece() {
        StringBuilder pieces = new StringBuilder();
        JsonOut.writeList(List.of(), pieces::append);
        assertThat(pieces.toString()).isEqualTo("[]");
    }

    @Test
    void keys_stay_in_the_order_in_which_they_were_put() {
        assertThat(JsonOut.object().put("z", 1).put("a", 2).put("m", 3).written())
                .isEqualTo("{\"z\": 1, \"a\": 2, \"m\": 3}\n");
    }

    @Test
    void a_key_is_put_once() {
        JsonOut.Members object = JsonOut.object().put("a", 1);
        assertThatThrownBy(() -> object.put("a", 2)).hasMessage("Key put twice: a");
    }

    @Test
    void decimals_are_texts_in_plain_digits_with_the_digits_they_have() {
        assertThat(JsonOut.list(List.of(
                                JsonOut.decimal(new BigDecimal("12.50")),
                                JsonOut.decimal(new BigDecimal("1E+3")),
                                JsonOut.decimal(new BigDecimal("1E-9"))))
                        .written())
                .isEqualTo("[\"12.50\", \"1000\", \"0.000000001\"]\n");
    }

    @Test
    void any_text_comes_back_as_it_was() throws IOException {
        StringBuilder all = new StringBuilder();
        IntStream.range(0, 0x300).forEach(all::appendCodePoint);
        all.append("\u2028\u2029\uD83D\uDE9A\"\\/");
        JsonNode back = readBack(JsonOut.object().put("text", all.toString()));
        assertThat(back.get("text").asText()).isEqualTo(all.toString());
    }

    @Test
    void every_kind_of_value_comes_back() throws IOException {
        JsonNode back = readBack(JsonOut.object()
                .put("whole", -3)
                .put("truth", true)
                .put("nothing", JsonOut.nothing())
                .put("list", JsonOut.list(List.of(JsonOut.object().put("a", 1), JsonOut.list(List.of())))));
        assertThat(back)
                .isEqualTo(new ObjectMapper()
                        .readTree("{\"whole\": -3, \"truth\": true, \"nothing\": null, \"list\": [{\"a\": 1}, []]}"));
    }

    @Test
    void what_is_missing_is_left_out_where_asked() {
        assertThat(JsonOut.object()
                        .putIfAny("a", "")
                        .putIfAny("b", (BigDecimal) null)
                        .putIfAny("c", List.of())
                        .putIfAny("d", "x")
                        .written())
                .isEqualTo("{\"d\": \"x\"}\n");
    }
}
