package boltlore.logic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.logicng.datastructures.Tristate;

/** What this program takes from inside the SAT library: each of these fails where another version means something else. */
class SolverInternalsTest {

    private final SolverInternals.Search search = new SolverInternals.Search();
    private final int a = search.fresh();
    private final int b = search.fresh();
    private final int c = search.fresh();

    private Tristate ask(int... assumed) {
        return search.fulfil(new ConflictBudget(Deadline.NONE, search, Integer.MAX_VALUE), assumed);
    }

    @Test
    void variables_are_numbered_by_twos_and_an_odd_number_is_a_negation() {
        search.clause(SolverInternals.not(a), b);

        assertThat(a).isZero();
        assertThat(b).isEqualTo(2);
        assertThat(ask(a)).isEqualTo(Tristate.TRUE);
        assertThat(search.found(b)).isTrue();
        assertThat(ask(a, SolverInternals.not(b))).isEqualTo(Tristate.FALSE);
    }

    @Test
    void what_is_assumed_against_the_clauses_is_named_and_nothing_else() {
        search.clause(SolverInternals.not(a), SolverInternals.not(b));

        assertThat(ask(c, a, b)).isEqualTo(Tristate.FALSE);
        assertThat(search.against()).containsExactlyInAnyOrder(a, b);
    }

    @Test
    void what_follows_at_once_is_known_without_a_search() {
        search.clause(SolverInternals.not(a), b);
        search.clause(SolverInternals.not(b), c);
        ask();

        assertThat(search.refuted(new int[] {a}, new int[] {SolverInternals.not(c), c, SolverInternals.not(b)}))
                .containsExactly(true, false, true);
        assertThat(ask(a, SolverInternals.not(c))).isEqualTo(Tristate.FALSE);
        assertThat(ask(a)).isEqualTo(Tristate.TRUE);
    }

    @Test
    void the_literals_to_try_first_are_tried_first_in_their_order() {
        search.clause(SolverInternals.not(a), SolverInternals.not(b));

        search.tryFirst(a, b, c);
        ask();
        assertThat(List.of(search.found(a), search.found(b), search.found(c))).containsExactly(true, false, true);
        search.tryFirst(b, a, SolverInternals.not(c));
        ask();
        assertThat(List.of(search.found(a), search.found(b), search.found(c))).containsExactly(false, true, false);
    }

    @Test
    void variables_and_clauses_made_since_a_state_was_kept_can_be_forgotten() {
        int[] before = search.saveState();
        int fresh = search.fresh();
        search.clause(fresh);
        search.clause(SolverInternals.not(fresh), a);
        assertThat(ask(SolverInternals.not(a))).isEqualTo(Tristate.FALSE);

        search.loadState(before);

        assertThat(ask(SolverInternals.not(a))).isEqualTo(Tristate.TRUE);
        assertThat(search.fresh()).isEqualTo(fresh);
    }

    @Test
    void diagrams_count_and_grow_no_further_than_they_may() {
        SolverInternals.Diagrams small = new SolverInternals.Diagrams(new int[] {2, 0, 1}, 100, 1_000, Deadline.NONE);
        int some = small.or(small.literal(a), small.and(small.literal(b), small.negated(small.literal(c))));

        assertThat(small.count(some)).isEqualTo(BigInteger.valueOf(5));
        small.letGo(0);
        assertThat(small.kept()).isZero();

        int[] many = IntStream.range(0, 60).toArray();
        SolverInternals.Diagrams bounded = new SolverInternals.Diagrams(many, 1_000, 2_000, Deadline.NONE);
        assertThatThrownBy(() -> {
                    int all = bounded.never();
                    for (int i = 0; i < 30; i++) {
                        all = bounded.or(all, bounded.and(bounded.literal(2 * i), bounded.literal(2 * (i + 30))));
                    }
                })
                .isInstanceOf(SolverInternals.Outgrown.class);
    }
}
