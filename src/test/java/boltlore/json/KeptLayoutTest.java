package boltlore.json;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.faults.Outcome;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("An edited JSON text in the layout that it had")
class KeptLayoutTest {

    /** Laid out by hand, as no program would. */
    private static final String BEFORE = """
            {
                "limits" : [ ],
                "positions": [
                    { "position":"lamp",   "quantity": "1" },
                    {
                        "position": "bolt",
                        "note": "a \\"quoted\\" } ] note"
                    }
                ] }

            """;

    private static String edited(String before, String after) {
        return JsonFile.parse("", after.getBytes(StandardCharsets.UTF_8)) instanceof Outcome.Sound<Json> tree
                ? KeptLayout.of(before, JsonOut.of(tree.value()))
                : "";
    }

    private static String with(String from, String to) {
        return edited(BEFORE, BEFORE.replace(from, to));
    }

    @Test
    void what_is_equal_is_copied_letter_by_letter() {
        assertThat(edited(BEFORE, BEFORE.replaceAll("\\s+\"", "\""))).isEqualTo(BEFORE);
    }

    @Test
    void one_value_changes_alone() {
        assertThat(with("\"1\"", "\"2\"")).isEqualTo(BEFORE.replace("\"1\"", "\"2\""));
    }

    @Test
    void a_new_member_stands_as_its_neighbours_do() {
        String after = with("] note\"", "] note\", \"bag\": \"B\"");

        assertThat(after)
                .contains("] note\",\n            \"bag\": \"B\"\n        }")
                .contains("\"position\":\"lamp\",   ");
    }

    @Test
    void an_item_that_goes_leaves_the_others_as_they_are() {
        String after =
                edited(BEFORE, "{\"limits\": [], \"positions\": [{\"position\": \"lamp\", \"quantity\": \"1\"}]}");

        assertThat(after).isEqualTo("""
                        {
                            "limits" : [ ],
                            "positions": [
                                { "position":"lamp",   "quantity": "1" }
                            ] }

                        """);
    }

    @Test
    void a_new_item_stands_in_its_place() {
        String after = with("\"1\" },", "\"1\" }, {\"position\": \"horn\"},");

        assertThat(after).contains("\"quantity\": \"1\" },\n        {\"position\": \"horn\"},\n        {\n");
    }

    @Test
    void what_was_empty_is_laid_out_anew() {
        assertThat(with("[ ]", "[{\"limit\": \"odd\"}]")).startsWith("{\n    \"limits\" : [{\"limit\": \"odd\"}],\n");
    }
}
