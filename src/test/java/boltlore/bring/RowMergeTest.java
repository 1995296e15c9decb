package boltlore.bring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The cases of a merge of three states as revision control has them; common practice, no source. */
@DisplayName("Rows that two people edited")
class RowMergeTest {

    private static final Map<String, SortedMap<String, String>> BASE = rows("bolt", "2", "lamp", "1");

    private final List<RowMerge.Clash> clashes = new ArrayList<>();

    /** Names with their quantities, in turns. */
    private static Map<String, SortedMap<String, String>> rows(String... namesAndQuantities) {
        Map<String, SortedMap<String, String>> rows = new LinkedHashMap<>();
        for (int i = 0; i < namesAndQuantities.length; i += 2) {
            rows.put(
                    namesAndQuantities[i],
                    new TreeMap<>(Map.of("quantity", namesAndQuantities[i + 1], "part", "P", "=name", "x" + i)));
        }
        return rows;
    }

    private List<String> merged(
            Map<String, SortedMap<String, String>> there, Map<String, SortedMap<String, String>> here) {
        return new RowMerge(BASE, there)
                .with(here, clashes::add).entrySet().stream()
                        .map(row -> row.getKey() + " " + row.getValue().get("quantity"))
                        .toList();
    }

    @Test
    void each_side_keeps_its_own_edit() {
        assertThat(merged(rows("bolt", "2", "lamp", "5"), rows("bolt", "3", "lamp", "1")))
                .containsExactly("bolt 3", "lamp 5");
        assertThat(clashes).isEmpty();
    }

    @Test
    void the_same_edit_on_both_sides_is_no_clash() {
        assertThat(merged(rows("bolt", "3", "lamp", "1"), rows("bolt", "3", "lamp", "1")))
                .containsExactly("bolt 3", "lamp 1");
        assertThat(clashes).isEmpty();
    }

    @Test
    void two_edits_of_one_cell_clash_and_leave_it_as_it_is_there() {
        assertThat(merged(rows("bolt", "4", "lamp", "1"), rows("bolt", "3", "lamp", "1")))
                .containsExactly("bolt 4", "lamp 1");
        assertThat(clashes).containsExactly(new RowMerge.Clash("bolt", "quantity", "2", "3", "4"));
    }

    @Test
    void a_row_goes_where_one_side_takes_it_out_and_the_other_left_it() {
        assertThat(merged(rows("lamp", "1"), rows("bolt", "2", "lamp", "1"))).containsExactly("lamp 1");
        assertThat(merged(rows("bolt", "2", "lamp", "1"), rows("lamp", "1"))).containsExactly("lamp 1");
        assertThat(clashes).isEmpty();
    }

    @Test
    void a_row_that_one_side_takes_out_and_the_other_edits_clashes() {
        assertThat(merged(rows("bolt", "4", "lamp", "1"), rows("lamp", "1")))
                .containsExactlyInAnyOrder("bolt 4", "lamp 1");
        assertThat(merged(rows("lamp", "1"), rows("bolt", "3", "lamp", "1"))).containsExactly("lamp 1");
        assertThat(clashes).hasSize(2);
    }

    @Test
    void new_rows_of_both_come_in() {
        assertThat(merged(rows("bolt", "2", "lamp", "1", "horn", "1"), rows("bolt", "2", "strap", "9", "lamp", "1")))
                .containsExactly("bolt 2", "strap 9", "lamp 1", "horn 1");
        assertThat(clashes).isEmpty();
    }

    @Test
    void what_only_tells_is_no_edit() {
        Map<String, SortedMap<String, String>> here = rows("bolt", "2", "lamp", "1");
        here.values().forEach(row -> row.put("=name", "other"));

        assertThat(merged(rows("lamp", "1"), here)).containsExactly("lamp 1");
        assertThat(clashes).isEmpty();
    }
}
