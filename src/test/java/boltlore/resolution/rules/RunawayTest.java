package boltlore.resolution.rules;

import static boltlore.resolution.rules.Named.byPart;
import static boltlore.resolution.rules.Named.part;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boltlore.resolution.Way;
import boltlore.resolution.rules.Facts.Brings;
import boltlore.resolution.rules.Facts.ConditionKey;
import boltlore.resolution.rules.Facts.InKit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class RunawayTest {

    /** A chain of parts, each inside the one before: two firings for each, and one for each as it is not picked. */
    private static List<Object> chainOf(int length) {
        List<Object> facts = new ArrayList<>(List.of(new InKit(byPart("P0"))));
        for (int at = 0; at < length; at++) {
            facts.add(new Brings(byPart("P" + at), Way.CONTAINS, part("P" + (at + 1)), ConditionKey.ALWAYS));
        }
        return facts;
    }

    private static void conclude(int firingsAtLeast, int firingsPerFact, List<Object> facts) {
        try (RuleSession session = new RuleSession(firingsAtLeast, firingsPerFact, UnaryOperator.identity())) {
            session.insert(facts);
            session.conclude();
        }
    }

    @Test
    void rules_that_fire_beyond_the_bound_are_stopped_and_named() {
        assertThatThrownBy(() -> conclude(50, 0, chainOf(100)))
                .isInstanceOf(RunawayRules.class)
                .hasMessageContaining("stopped after 50 firings")
                .hasMessageContaining("An assembly in the kit brings what it contains")
                .hasMessageContaining("A part that something brings is in the kit");
    }

    @Test
    void rules_that_come_to_an_end_below_the_bound_are_not() {
        assertThatCode(() -> conclude(201, 0, chainOf(100))).doesNotThrowAnyException();
    }

    @Test
    void rules_that_come_to_an_end_just_at_the_bound_are_not() {
        assertThatCode(() -> conclude(200, 0, chainOf(100))).doesNotThrowAnyException();
    }

    @Test
    void the_bound_grows_with_the_facts() {
        assertThatCode(() -> conclude(10, 2, chainOf(1_000))).doesNotThrowAnyException();
        assertThatThrownBy(() -> conclude(10, 1, chainOf(1_000))).isInstanceOf(RunawayRules.class);
    }

    @Test
    void a_session_of_use_has_room_for_a_large_kit() {
        try (RuleSession session = new RuleSession()) {
            session.insert(chainOf(5_000));
            session.conclude();

            assertThat(session.all(InKit.class)).hasSize(5_001);
        }
    }
}
