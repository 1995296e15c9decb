package boltlore.trades.picking;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.sketch.CatalogueSketch;
import boltlore.walking.RouteRule;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class WalkTest {

    private static final Walk WALK = new Walk(List.of("F", "H", "C"));

    @Test
    void aisles_are_walked_in_the_workshops_order_not_by_letter() {
        assertThat(walked("C-01-01-A-01", "H-01-01-A-01", "F-01-01-A-01"))
                .containsExactly("F-01-01-A-01", "H-01-01-A-01", "C-01-01-A-01");
    }

    @Test
    @DisplayName("The first aisle goes up its bays, the second comes down, the third goes up again")
    void serpentine() {
        assertThat(walked(
                        "F-02-01-A-01", "F-01-01-A-01", "H-01-01-A-01", "H-02-01-A-01", "C-02-01-A-01", "C-01-01-A-01"))
                .containsExactly(
                        "F-01-01-A-01", "F-02-01-A-01", "H-02-01-A-01", "H-01-01-A-01", "C-01-01-A-01", "C-02-01-A-01");
    }

    @Test
    void bays_are_numbers_not_text() {
        assertThat(walked("F-10-01-A-01", "F-9-01-A-01")).containsExactly("F-9-01-A-01", "F-10-01-A-01");
    }

    @Test
    @DisplayName("Within a bay: rack, then shelf, then place, upwards in every aisle")
    void within_a_bay() {
        assertThat(walked("H-01-02-A-01", "H-01-01-B-01", "H-01-01-A-10", "H-01-01-A-9"))
                .containsExactly("H-01-01-A-9", "H-01-01-A-10", "H-01-01-B-01", "H-01-02-A-01");
    }

    @Test
    void what_is_no_bin_comes_last_and_no_bin_at_all_after_it() {
        assertThat(walked("", "behind the door", "X-01-01-A-01", "C-99-01-A-01"))
                .containsExactly("C-99-01-A-01", "X-01-01-A-01", "behind the door", "");
    }

    @Test
    void a_bin_lies_on_the_way_only_in_a_listed_aisle() {
        assertThat(WALK.passes("H-01-01-A-01")).isTrue();
        assertThat(WALK.passes("X-01-01-A-01")).isFalse();
        assertThat(WALK.passes("H-01-01-A")).isFalse();
        assertThat(WALK.passes("")).isFalse();
    }

    @Test
    void its_length_is_told_beside_that_of_each_rule() {
        Walk measured = Walk.of(new CatalogueSketch().layout().draw());
        Walk.Lengths lengths = measured.lengths(List.of("F-01-01-A-01", "H-02-01-A-01", "C-01-01-A-01", "X-01-01-A-01"))
                .orElseThrow();

        // in and out of each aisle from the front: 1 + 2 + 1 m deep, 6 m along the front, there and back
        assertThat(lengths.asListed()).isEqualTo(2 * (1_000 + 2_000 + 1_000) + 2 * 6_000);
        assertThat(lengths.of(RouteRule.RETURN)).isEqualTo(20_000);
        assertThat(lengths.of(RouteRule.SHORTEST)).isEqualTo(20_000);
        assertThat(lengths.of(RouteRule.S_SHAPE)).isEqualTo(11_000 + 3_000 + 11_000 + 3_000 + 2_000 + 6_000);
        assertThat(lengths.unmeasured()).isEqualTo(1);
    }

    @Test
    void without_measured_aisles_nothing_is_said_of_its_length() {
        assertThat(WALK.lengths(List.of("F-01-01-A-01"))).isEmpty();
    }

    @Test
    void by_a_rule_bins_come_as_it_passes_them() {
        Walk measured = Walk.of(new CatalogueSketch().layout().draw());
        List<String> bins = List.of("F-01-01-A-01", "H-01-01-A-01", "H-09-01-A-01", "C-01-01-A-01", "no bin");

        assertThat(bins.stream().sorted(measured.order(RouteRule.LARGEST_GAP, bins)))
                .containsExactly("F-01-01-A-01", "H-09-01-A-01", "C-01-01-A-01", "H-01-01-A-01", "no bin");
        assertThat(bins.stream().sorted(measured.order(RouteRule.RETURN, bins)))
                .containsExactly("F-01-01-A-01", "H-01-01-A-01", "H-09-01-A-01", "C-01-01-A-01", "no bin");
    }

    private static List<String> walked(String... bins) {
        List<String> sorted = new ArrayList<>(List.of(bins));
        sorted.sort(WALK.order());
        return sorted;
    }
}
