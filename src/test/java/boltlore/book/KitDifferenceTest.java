package boltlore.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class KitDifferenceTest {

    private static KitLine line(String part, String revision, String finish, String quantity) {
        return new KitLine(
                1, "place", part, revision, finish, new BigDecimal(quantity), "each", "buy", true, "", "", "");
    }

    private static List<String> differ(List<KitLine> before, List<KitLine> after) {
        return KitDifference.of(before, after).changes().stream()
                .map(KitDifference.Change::toString)
                .toList();
    }

    @Test
    void the_same_kit_differs_in_nothing_wherever_its_pieces_stand() {
        assertThat(differ(
                        List.of(line("A", "1", "", "2"), line("A", "1", "", "1")), List.of(line("A", "1", "", "3.0"))))
                .isEmpty();
    }

    @Test
    void another_revision_goes_out_and_comes_in() {
        assertThat(differ(List.of(line("A", "1", "", "2")), List.of(line("A", "2", "", "2"))))
                .containsExactly("goes out: 2 each A rev. 1", "comes in: 2 each A rev. 2");
    }

    @Test
    void so_does_another_finish() {
        assertThat(differ(List.of(line("A", "1", "green", "1")), List.of(line("A", "1", "grey", "1"))))
                .containsExactly("goes out: 1 each A rev. 1, green", "comes in: 1 each A rev. 1, grey");
    }

    @Test
    void of_a_piece_that_stays_in_part_only_the_rest_goes_out() {
        assertThat(differ(List.of(line("A", "1", "", "5")), List.of(line("A", "1", "", "2"))))
                .containsExactly("goes out: 3 each A rev. 1");
    }
}
