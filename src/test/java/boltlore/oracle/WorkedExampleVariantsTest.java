package boltlore.oracle;

import static boltlore.oracle.WorkedExample.CATALOGUE;
import static boltlore.oracle.WorkedExample.EXPECTED;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Costs;
import boltlore.choices.Choices;
import boltlore.choices.Mentions;
import boltlore.measure.PartNumber;
import boltlore.order.LeftOut;
import boltlore.resolution.Resolution;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** All variants of the worked example, by rules and by oracle. */
class WorkedExampleVariantsTest {

    private static final List<Choices> VARIANTS = WorkedExample.variants();
    private static final Resolver RESOLVER = new RuleResolver(CATALOGUE);
    private static final Oracle ORACLE = new Oracle(CATALOGUE);

    private static Resolution.Resolved byRules(Choices choices) {
        return Agreement.resolved(RESOLVER.resolve(choices, new LeftOut.Undecided()));
    }

    private static Resolution.Resolved byOracle(Choices choices) {
        return ORACLE.resolve(choices, new LeftOut.Undecided());
    }

    private static final List<Function<Choices, Resolution.Resolved>> BOTH =
            List.of(WorkedExampleVariantsTest::byRules, WorkedExampleVariantsTest::byOracle);

    @Test
    void rules_and_oracle_agree_on_each() {
        VARIANTS.forEach(new Agreement(CATALOGUE)::on);
    }

    @Test
    void there_are_as_many_as_expected() {
        List<Choices> completed = new ArrayList<>();
        Completions.visit(Choices.of(WorkedExample.FAMILY, Map.of()), completed::add);

        assertThat(VARIANTS).hasSize(EXPECTED.number("validVariants"));
        assertThat(completed).containsExactlyInAnyOrderElementsOf(VARIANTS);
    }

    @Test
    void there_are_as_many_as_expected_without_the_options_that_decide_nothing() {
        assertThat(VARIANTS.stream()
                        .map(variant -> {
                            var values = new HashMap<>(variant.values());
                            values.keySet().retainAll(Mentions.find(WorkedExample.FAMILY));
                            return values;
                        })
                        .distinct())
                .hasSize(EXPECTED.number("validWithoutFreeOptions"));
    }

    @Test
    void the_findings_touch_as_many_as_expected() {
        for (Function<Choices, Resolution.Resolved> engine : BOTH) {
            SortedMap<String, Integer> counts = new TreeMap<>();
            for (Choices variant : VARIANTS) {
                WorkedExample.said(engine.apply(variant)).forEach(finding -> counts.merge(finding, 1, Integer::sum));
            }

            assertThat(counts).isEqualTo(EXPECTED.findingsOverAllVariants());
        }
    }

    @Test
    void parts_are_in_as_many_as_expected() {
        for (Function<Choices, Resolution.Resolved> engine : BOTH) {
            SortedMap<String, Integer> share = new TreeMap<>();
            for (String part : EXPECTED.counts("shareOfPart").keySet()) {
                share.put(part, (int) VARIANTS.stream()
                        .filter(variant -> engine.apply(variant).kit().contains(new PartNumber(part)))
                        .count());
            }

            assertThat(share).isEqualTo(EXPECTED.counts("shareOfPart"));
        }
    }

    @Test
    void the_cheapest_and_the_dearest_cost_what_is_expected() {
        List<BigDecimal> bills = VARIANTS.stream()
                .map(variant -> Costs.kit(Bills.of(RESOLVER, variant, new LeftOut.Undecided())))
                .sorted()
                .toList();
        List<BigDecimal> sums = VARIANTS.stream()
                .map(variant -> ORACLE.sums(byOracle(variant)).cost())
                .sorted()
                .toList();

        assertThat(bills.get(0)).isEqualByComparingTo(EXPECTED.decimal("cheapest"));
        assertThat(bills.get(bills.size() - 1)).isEqualByComparingTo(EXPECTED.decimal("dearest"));
        assertThat(sums).usingElementComparator(Comparator.naturalOrder()).isEqualTo(bills);
    }
}
