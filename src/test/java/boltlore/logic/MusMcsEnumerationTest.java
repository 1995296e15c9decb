package boltlore.logic;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Minimal conflicts and repairs of textbook examples")
class MusMcsEnumerationTest {

    private static final List<Integer> PRICES = List.of(500, 500, 800, 500, 2600);

    private static String expected(String id) {
        CheckRow row = CheckTable.rows("choosing-examples.csv", id).findFirst().orElseThrow();
        return row.text("expected");
    }

    /** '{1, 5}; {2, 5}' */
    private static Set<Set<Integer>> sets(String written) {
        return Arrays.stream(written.split(";"))
                .map(set -> set.replaceAll("[{} ]", ""))
                .map(set -> Arrays.stream(set.split(",")).map(Integer::valueOf).collect(Collectors.toSet()))
                .collect(Collectors.toSet());
    }

    private static Set<Set<Integer>> asSets(List<List<Integer>> lists) {
        return lists.stream().map(Set::copyOf).collect(Collectors.toSet());
    }

    private static boolean withinBudget(Collection<Integer> wishes) {
        return wishes.stream().mapToInt(wish -> PRICES.get(wish - 1)).sum() <= 3000;
    }

    /** 1: a. 2: not a. 3: not a or b. 4: not b. */
    private static boolean fourLimits(Collection<Integer> kept) {
        return IntStream.range(0, 4).anyMatch(bits -> {
            boolean a = (bits & 1) == 1;
            boolean b = (bits & 2) == 2;
            List<Boolean> holds = List.of(a, !a, !a || b, !b);
            return kept.stream().allMatch(limit -> holds.get(limit - 1));
        });
    }

    private static <T> MusMcsEnumeration<T> all(List<T> requests, Predicate<Collection<T>> consistent) {
        return MusMcsEnumeration.of(requests, consistent, 1000, Deadline.NONE);
    }

    @Test
    @DisplayName("BU-01: one conflict of priced wishes under a budget, the last wishes dispensable")
    void one_conflict_under_a_budget() {
        List<Integer> lastFirst = List.of(5, 4, 3, 2, 1);

        List<Integer> conflict = MinimalConflict.find(lastFirst, MusMcsEnumerationTest::withinBudget)
                .orElseThrow();

        assertThat(Set.of(Set.copyOf(conflict))).isEqualTo(sets(expected("BU-01")));
    }

    @Test
    @DisplayName("BU-02, BU-03: all conflicts and repairs of priced wishes under a budget")
    void all_conflicts_under_a_budget() {
        MusMcsEnumeration<Integer> found = all(List.of(1, 2, 3, 4, 5), MusMcsEnumerationTest::withinBudget);

        assertThat(asSets(found.conflicts())).isEqualTo(sets(expected("BU-02")));
        assertThat(asSets(found.repairs())).isEqualTo(sets(expected("BU-03")));
        assertThat(found.complete()).isTrue();
    }

    @Test
    @DisplayName("BU-04: the smallest repair of priced wishes under a budget gives up the dearest alone")
    void the_smallest_repair_under_a_budget() {
        List<Integer> smallest = all(List.of(1, 2, 3, 4, 5), MusMcsEnumerationTest::withinBudget).repairs().stream()
                .min(Comparator.comparingInt(List::size))
                .orElseThrow();

        assertThat(smallest.size() + " (give up item " + smallest.get(0) + ")").isEqualTo(expected("BU-04"));
    }

    @Test
    @DisplayName("MU-01, MU-02: all conflicts and repairs of four small limits")
    void four_small_limits() {
        MusMcsEnumeration<Integer> found = all(List.of(1, 2, 3, 4), MusMcsEnumerationTest::fourLimits);

        assertThat(asSets(found.conflicts())).isEqualTo(sets(expected("MU-01")));
        assertThat(asSets(found.repairs())).isEqualTo(sets(expected("MU-02")));
    }

    @Test
    @DisplayName("PI-01: three items into two places contradict by all nine limits together")
    void pigeonhole() {
        List<Integer> limits = IntStream.range(0, 9).boxed().toList();

        MusMcsEnumeration<Integer> found = all(limits, kept -> placed(kept));

        assertThat(expected("PI-01")).isEqualTo("9; yes; 9");
        assertThat(found.conflicts()).containsExactly(limits);
        assertThat(found.repairs()).hasSize(9);
    }

    /** Limits 0 to 2: item i is in some place. Limits 3 to 8: items of a pair are not both in a place. */
    private static boolean placed(Collection<Integer> kept) {
        int[][] pairs = {{0, 1}, {0, 2}, {1, 2}};
        return IntStream.range(0, 64)
                .anyMatch(bits -> kept.stream().allMatch(limit -> {
                    if (limit < 3) {
                        return (bits >> (2 * limit) & 3) != 0;
                    }
                    int[] pair = pairs[(limit - 3) / 2];
                    int place = (limit - 3) % 2;
                    return (bits >> (2 * pair[0] + place) & 1) + (bits >> (2 * pair[1] + place) & 1) < 2;
                }));
    }

    @Test
    @DisplayName("each conflict meets each repair, and no smaller set does")
    void conflicts_and_repairs_hit_each_other() {
        MusMcsEnumeration<Integer> found = all(List.of(1, 2, 3, 4, 5), MusMcsEnumerationTest::withinBudget);

        for (List<Integer> repair : found.repairs()) {
            assertThat(found.conflicts()).allMatch(conflict -> conflict.stream().anyMatch(repair::contains));
            for (Integer request : repair) {
                List<Integer> fewer = new ArrayList<>(repair);
                fewer.remove(request);
                assertThat(found.conflicts())
                        .anyMatch(conflict -> conflict.stream().noneMatch(fewer::contains));
            }
        }
    }

    @Test
    void requests_that_stand_together_have_no_conflict_and_an_empty_repair() {
        MusMcsEnumeration<Integer> found = all(List.of(1, 2, 3), MusMcsEnumerationTest::withinBudget);

        assertThat(found.conflicts()).isEmpty();
        assertThat(found.repairs()).containsExactly(List.of());
    }

    @Test
    void a_background_that_cannot_be_fulfilled_is_one_conflict_without_requests() {
        MusMcsEnumeration<Integer> found = all(List.of(1, 2, 3), kept -> false);

        assertThat(found.conflicts()).containsExactly(List.of());
        assertThat(found.repairs()).isEmpty();
    }

    @Test
    void a_search_that_ends_at_its_limit_says_so() {
        MusMcsEnumeration<Integer> found =
                MusMcsEnumeration.of(List.of(1, 2, 3, 4, 5), MusMcsEnumerationTest::withinBudget, 2, Deadline.NONE);

        assertThat(found.complete()).isFalse();
        assertThat(found.conflicts().size() + found.repairs().size()).isEqualTo(2);
    }
}
