package boltlore.resolution.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RuleCasesTest {

    static List<RuleCase> cases() {
        return Stream.of(
                        LineCases.all(),
                        BracketCases.all(),
                        PositionCases.all(),
                        CompanionCases.all(),
                        ElectricCases.all(),
                        ConnectorCases.all(),
                        WorkshopCases.all())
                .flatMap(List::stream)
                .toList();
    }

    private record Run(Set<String> fired, List<Object> concluded) {

        static Run of(List<Object> facts, Class<?> type) {
            try (RuleSession session = new RuleSession()) {
                SortedMap<String, Integer> firings = session.countFirings();
                session.insert(facts);
                session.conclude();
                List<Object> concluded = new ArrayList<>(session.all(type));
                concluded.removeAll(facts);
                return new Run(firings.keySet(), concluded);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void the_rule_concludes_exactly_this(RuleCase row) {
        Run run = Run.of(row.facts(), row.conclusions().get(0).getClass());

        assertThat(run.fired()).contains(row.rule());
        assertThat(run.concluded()).containsExactlyInAnyOrderElementsOf(row.conclusions());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void the_rule_lets_the_near_miss_pass(RuleCase row) {
        Run run = Run.of(row.nearMiss(), row.conclusions().get(0).getClass());

        assertThat(run.fired()).doesNotContain(row.rule());
        assertThat(run.concluded()).doesNotContainAnyElementsOf(row.conclusions());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void the_near_miss_differs_in_one_fact(RuleCase row) {
        Set<Object> taken = new HashSet<>(row.facts());
        row.nearMiss().forEach(taken::remove);
        Set<Object> added = new HashSet<>(row.nearMiss());
        row.facts().forEach(added::remove);

        assertThat(taken).hasSizeLessThanOrEqualTo(1);
        assertThat(added).hasSizeLessThanOrEqualTo(1);
        assertThat(taken.size() + added.size()).isPositive();
    }

    @Test
    void the_table_covers_every_rule_and_no_other() {
        Set<String> inTable = cases().stream().map(RuleCase::rule).collect(Collectors.toSet());
        Set<String> written = RuleFile.all().stream()
                .flatMap(file -> file.ruleNames().stream())
                .collect(Collectors.toSet());

        assertThat(inTable).isEqualTo(written);
    }
}
