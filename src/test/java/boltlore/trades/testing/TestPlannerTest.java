package boltlore.trades.testing;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Bill;
import boltlore.catalogue.Circuit;
import boltlore.catalogue.Demand;
import boltlore.catalogue.Feature;
import boltlore.catalogue.LimitRule;
import boltlore.demo.Demo;
import boltlore.trades.charging.Isolation;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The tests of one kit")
class TestPlannerTest {

    private static TestPlan plan(String order) {
        return TestPlanner.plan(Demo.catalogue(), Demo.bill(order));
    }

    private static Set<String> keys(String name) {
        return plan(name).rows().map(TestRow::key).collect(Collectors.toSet());
    }

    private static TestRow row(String order, String key) {
        return plan(order).row(key).orElseThrow();
    }

    private static BigDecimal least(TestRow row) {
        return ((Limit.AtLeast) row.limit()).least();
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1002", "bl-1004", "bl-1008", "bl-2001", "bl-2002"})
    void every_piece_with_an_earth_point_is_tried_for_bonding_and_nothing_twice(String order) {
        Bill bill = Demo.bill(order);
        long pieces = bill.all()
                .filter(item -> item.part().coat() != null
                        && item.part().coat().features().stream()
                                .anyMatch(feature -> feature.kind() == Feature.Kind.EARTH))
                .mapToLong(item -> item.quantity().longValueExact())
                .sum();
        List<String> keys = plan(order).rows().map(TestRow::key).toList();
        assertThat(keys).doesNotHaveDuplicates();
        long earthed = keys.stream()
                .filter(key -> key.startsWith("bonding.") && key.split("\\.", -1).length > 2)
                .count();
        assertThat(earthed).isEqualTo(pieces).isPositive();
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1004", "bl-1012", "bl-2001", "bl-2002", "bl-2003"})
    void every_limit_of_the_demo_can_be_worked_out(String order) {
        assertThat(plan(order).rows()).noneMatch(row -> row.limit() instanceof Limit.Unknown);
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1012", "bl-2001"})
    void what_labels_several_places_is_named_as_a_set_of_labels(String order) {
        assertThat(plan(order).labels().stream()
                        .collect(Collectors.groupingBy(PlacedLabel::part))
                        .entrySet())
                .filteredOn(label -> label.getValue().size() > 1)
                .isNotEmpty()
                .allSatisfy(label -> assertThat(label.getKey().name().english()).contains(" labels"));
    }

    @Test
    void the_second_string_is_tested_where_there_is_one() {
        assertThat(keys("bl-1001"))
                .contains("isolation-string.second-string-contactors", "contactors-rest.second-string-contactors");
        assertThat(keys("bl-1002"))
                .contains("isolation-string.contactors")
                .noneMatch(key -> key.contains("second-string"));
    }

    @Test
    void the_latch_of_the_handle_is_tried_on_inlets_that_have_one() {
        assertThat(keys("bl-1004")).contains("inlet-latch.inlet").noneMatch(key -> key.startsWith("inlet-locked"));
        assertThat(keys("bl-1001")).contains("inlet-locked.inlet-lock").noneMatch(key -> key.startsWith("inlet-latch"));
    }

    @Test
    void isolation_is_the_class_of_the_buses_times_the_highest_voltage() {
        TestRow row = row("bl-1001", "isolation-link.junction-box");
        String[] basis = row.basis().split(" ohm/V × | V", -1);
        BigDecimal ohm = new BigDecimal(basis[0]).multiply(new BigDecimal(basis[1]));
        assertThat(least(row)).isEqualByComparingTo(ohm.movePointLeft(3));
        assertThat(row.unit()).isEqualTo("kohm");
    }

    /**
     * UN Regulation 100, 5.1.3.4, as read in a national text of 2019: 1 Mohm with the coupler disconnected; 5.1.3.1: 500 ohm/V
     * of an AC bus.
     */
    @Test
    void the_inlet_keeps_the_stricter_of_both_limits() {
        assertThat(least(row("bl-1001", "isolation-mains.inlet"))).isEqualByComparingTo("1");
        assertThat(row("bl-1001", "isolation-mains.inlet").basis()).isEqualTo("1 Mohm; 500 ohm/V × 398 V");
        assertThat(row("bl-1002", "isolation-mains.inlet").basis()).isEqualTo("1 Mohm; 500 ohm/V × 230 V");
    }

    @Test
    void by_the_newest_series_alone_it_takes_the_voltage_between_lines_of_a_three_phase_supply() {
        // By hand: 500 ohm/V × 398 V = 0.199 Mohm, and 500 ohm/V × 230 V = 0.115 Mohm on one phase.
        assertThat(perVolt("bl-1001")).isEqualByComparingTo("0.199");
        assertThat(perVolt("bl-1002")).isEqualByComparingTo("0.115");
        assertThat(Isolation.inletOhm(new BigDecimal("2500"))).isEqualByComparingTo("1250000");
    }

    private static @Nullable BigDecimal perVolt(String order) {
        return new MainsRules(Demo.bill(order).resolved().choices())
                .isolationPerVolt()
                .value();
    }

    /** Dead, then with contactors open, then the precharge, then live. */
    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1004", "bl-2001", "bl-2002"})
    void nothing_is_tested_live_before_it_is_tested_dead(String order) {
        List<Circuit> circuits = plan(order).groups().stream()
                .map(group -> group.group().circuit())
                .toList();

        assertThat(circuits).doesNotContainNull().isSorted().startsWith(Circuit.DEAD);
        assertThat(plan(order).rows().map(TestRow::key).toList())
                .containsSubsequence(
                        "insulation-link.junction-box",
                        "isolation-string.contactors",
                        "precharge-volts",
                        "isolation-link.junction-box");
    }

    @Test
    void the_dead_circuit_keeps_what_the_live_one_does() {
        assertThat(least(row("bl-1001", "insulation-link.junction-box")).movePointRight(3))
                .isGreaterThanOrEqualTo(least(row("bl-1001", "isolation-link.junction-box")));
    }

    @Test
    void the_pilot_offers_the_customers_supply() {
        // DC-05: 16 A are a duty cycle of 26.67 % (IEC 61851-1, Annex A); 2 % of that either way, rounded inward.
        assertThat(row("bl-1001", "pilot-duty.inlet").limit())
                .isEqualTo(new Limit.Between(new BigDecimal("26.14"), new BigDecimal("27.20")));
    }

    @Test
    void power_is_what_the_weakest_link_lets_through() {
        // CP-05: 3 × 230 V × 16 A = 11,040 W; CP-03: 230 V × 32 A = 7,360 W; 10 % either way.
        assertThat(row("bl-1001", "charge-power.charger").limit())
                .isEqualTo(new Limit.Between(new BigDecimal("9.936"), new BigDecimal("12.14")));
        assertThat(row("bl-1002", "charge-power.charger").limit())
                .isEqualTo(new Limit.Between(new BigDecimal("6.624"), new BigDecimal("8.096")));
    }

    @Test
    void labels_go_on_what_is_in_the_kit_and_come_out_of_it_in_the_orders_language() {
        TestPlan german = plan("bl-1011");
        assertThat(german.labels())
                .extracting(label -> label.part().number().text())
                .contains("LB-HV-DE", "LB-AC-DE")
                .noneMatch(part -> part.endsWith("-EN"));
        assertThat(plan("bl-1012").labels())
                .extracting(label -> label.label().name())
                .doesNotContain("refrigerant", "export");
    }

    @Test
    void manual_sections_are_those_of_this_kit_in_order() {
        Stream<String> sections = plan("bl-1001").sections().stream()
                .map(section -> section.section().number());
        assertThat(sections.toList())
                .containsSubsequence("2.3", "3.2", "4.1", "4.2", "6.2", "7", "9.1", "9.3", "10.1", "14")
                .doesNotContain("2.1", "3.1", "6.1", "9.2", "10.2");
    }

    @Test
    void every_rule_of_limits_but_the_laxer_one_for_inlets_is_used_by_the_demo() {
        Set<LimitRule> used = Demo.catalogue().families().values().stream()
                .flatMap(family -> family.endOfLine().groups().stream())
                .flatMap(group -> group.tests().stream())
                .filter(test -> test.demand() instanceof Demand.Computed)
                .map(test -> ((Demand.Computed) test.demand()).rule())
                .collect(Collectors.toSet());
        assertThat(used)
                .containsExactlyInAnyOrderElementsOf(
                        EnumSet.complementOf(EnumSet.of(LimitRule.MAINS_ISOLATION_PER_VOLT)));
    }
}
