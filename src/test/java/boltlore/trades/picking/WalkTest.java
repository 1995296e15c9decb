package boltlore.trades.picking;

import static org.assertj.core.api.Assertions.assertThat;

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

    private static List<String> walked(String... bins) {
        List<String> sorted = new ArrayList<>(List.of(bins));
        sorted.sort(WALK.order());
        return sorted;
    }
}
