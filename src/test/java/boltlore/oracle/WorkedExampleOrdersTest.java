package boltlore.oracle;

import static boltlore.oracle.WorkedExample.CATALOGUE;
import static boltlore.oracle.WorkedExample.EXPECTED;
import static boltlore.oracle.WorkedExample.said;
import static boltlore.oracle.WorkedExample.texts;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Bill;
import boltlore.bill.Costs;
import boltlore.bill.Masses;
import boltlore.catalogue.Limit;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.resolution.OrderResolver;
import boltlore.resolution.Resolution;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The expected figures were worked out by a separate enumeration, one order of them by hand. */
class WorkedExampleOrdersTest {

    private static final Resolver RESOLVER = new RuleResolver(CATALOGUE);
    private static final Oracle ORACLE = new Oracle(CATALOGUE);

    private static Resolution resolve(Order order) {
        return WorkedExample.sound(new OrderResolver(RESOLVER).resolve(order, List.of()));
    }

    private static Resolution.Resolved byOracle(Order order) {
        return ORACLE.resolve(order.choices(), order.leftOut());
    }

    @ParameterizedTest
    @CsvSource({"EX-1, plain", "EX-2, no-air", "EX-3, no-air-left-out"})
    void an_order_gives_the_kit_that_is_expected(String name, String file) {
        Order order = WorkedExample.order(file);
        Resolution.Resolved byRules = (Resolution.Resolved) resolve(order);
        Expected expected = EXPECTED.order(name);

        for (Resolution.Resolved resolved : List.of(byRules, byOracle(order))) {
            assertThat(texts(resolved.kit().lines())).isEqualTo(expected.texts("lines"));
            assertThat(texts(resolved.kit().quantities())).isEqualTo(expected.quantities());
            assertThat(said(resolved)).isEqualTo(expected.findings());
        }
        assertThat(byRules).isEqualTo(byOracle(order));
    }

    @ParameterizedTest
    @CsvSource({"EX-1, plain", "EX-2, no-air", "EX-3, no-air-left-out"})
    void its_bill_costs_and_weighs_what_is_expected(String name, String file) {
        Order order = WorkedExample.order(file);
        Bill bill = Bills.of(RESOLVER, order.choices(), order.leftOut());
        PlainSums sums = ORACLE.sums(byOracle(order));
        Expected expected = EXPECTED.order(name);

        assertThat(Costs.kit(bill)).isEqualByComparingTo(expected.decimal("cost"));
        assertThat(Masses.kitKg(bill)).isEqualByComparingTo(expected.decimal("massKg"));
        assertThat(sums.cost()).isEqualByComparingTo(expected.decimal("cost"));
        assertThat(sums.massKg()).isEqualByComparingTo(expected.decimal("massKg"));
    }

    @Test
    void leaving_the_bracket_out_saves_its_part_and_the_two_bolts_that_the_joint_no_longer_asks_for() {
        Order order = WorkedExample.order("no-air-left-out");
        Expected expected = EXPECTED.order("EX-3");
        Bill without = Bills.of(RESOLVER, order.choices(), order.leftOut());
        Saving saving = Saving.between(Bills.of(RESOLVER, order.choices(), new LeftOut.Keep()), without);
        Expected saves = expected.at("saves");

        assertThat(texts(without.resolved().kit().leftOut())).isEqualTo(expected.texts("leftOut"));
        assertThat(texts(saving.quantities())).isEqualTo(saves.quantities());
        assertThat(saving.cost()).isEqualByComparingTo(saves.decimal("cost"));
        assertThat(saving.massKg()).isEqualByComparingTo(saves.decimal("massKg"));
    }

    @Test
    void an_order_that_breaks_limits_names_them_all() {
        Order order = WorkedExample.order("conflict");
        Resolution.Contradicted contradicted = (Resolution.Contradicted) resolve(order);

        assertThat(contradicted.broken())
                .extracting(Limit::name)
                .isEqualTo(EXPECTED.order("EX-4").texts("conflicts"));
        assertThat(new PlainChoice(WorkedExample.FAMILY, order.choices().values()).valid())
                .isFalse();
    }

    @Test
    void an_incomplete_order_is_open_in_these_options_and_can_be_completed_with_these_values() {
        Order order = WorkedExample.order("incomplete");
        Resolution.Incomplete incomplete = (Resolution.Incomplete) resolve(order);
        Expected expected = EXPECTED.order("EX-5");
        List<Choices> completions = new ArrayList<>();
        Completions.visit(order.choices(), completions::add);

        assertThat(completions).hasSize(expected.number("completions"));
        assertThat(stillPossible(incomplete.open(), completions)).isEqualTo(expected.lists("open"));
        assertThat(completions)
                .containsExactlyInAnyOrderElementsOf(WorkedExample.variants().stream()
                        .filter(variant -> variant.values()
                                .entrySet()
                                .containsAll(order.choices().values().entrySet()))
                        .toList());
    }

    private static SortedMap<String, List<String>> stillPossible(List<OptionName> open, List<Choices> completions) {
        SortedMap<String, List<String>> values = new TreeMap<>();
        for (OptionName option : open) {
            values.put(
                    option.text(),
                    completions.stream()
                            .map(choices -> choices.value(option).orElseThrow())
                            .distinct()
                            .sorted()
                            .toList());
        }
        return values;
    }
}
