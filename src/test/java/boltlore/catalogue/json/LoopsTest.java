package boltlore.catalogue.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Loops in a graph")
class LoopsTest {

    private static final List<Integer> MANY =
            IntStream.range(0, 200_000).boxed().toList();

    private static List<List<String>> loops(Map<String, List<String>> graph) {
        return Loops.in(graph.keySet().stream().sorted().toList(), node -> graph.getOrDefault(node, List.of()));
    }

    @Test
    void a_ring_begins_at_its_smallest_node_wherever_it_is_entered() {
        assertThat(loops(Map.of("a", List.of("c"), "c", List.of("d"), "d", List.of("b"), "b", List.of("c"))))
                .containsExactly(List.of("b", "c", "d"));
    }

    @Test
    void a_diamond_has_none() {
        assertThat(loops(Map.of("a", List.of("b", "c"), "b", List.of("d"), "c", List.of("d"), "d", List.of())))
                .isEmpty();
    }

    @Test
    void two_rings_are_both_found() {
        assertThat(loops(Map.of("a", List.of("b"), "b", List.of("a"), "c", List.of("d"), "d", List.of("c"))))
                .containsExactly(List.of("a", "b"), List.of("c", "d"));
    }

    @Test
    void a_node_that_leads_to_itself() {
        assertThat(loops(Map.of("a", List.of("a")))).containsExactly(List.of("a"));
    }

    @Test
    void a_chain_of_two_hundred_thousand_has_none_and_its_ring_has_one() {
        Function<Integer, List<Integer>> chain = node -> node + 1 < MANY.size() ? List.of(node + 1) : List.of();
        Function<Integer, List<Integer>> ring = node -> List.of((node + 1) % MANY.size());
        assertThat(Loops.in(MANY, chain)).isEmpty();
        assertThat(Loops.in(MANY, ring)).singleElement().isEqualTo(MANY);
    }

    @Test
    void a_loop_is_said_back_to_where_it_began() {
        assertThat(Loops.says(List.of("a", "b"))).isEqualTo("a → b → a");
    }
}
