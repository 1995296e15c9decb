package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Circuit;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Demand;
import boltlore.catalogue.KitTest;
import boltlore.catalogue.LimitRule;
import boltlore.catalogue.TestGroup;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A high-voltage kit is tested dead before it is tested live")
class TestOrderTest {

    private static final TestGroup BONDING = group("bonding", Circuit.DEAD, LimitRule.BONDING);
    private static final TestGroup INSULATION = group("insulation", Circuit.DEAD, LimitRule.DEAD_ISOLATION);
    private static final TestGroup STRINGS = group("strings", Circuit.CONTACTORS_OPEN, LimitRule.ISOLATION);
    private static final TestGroup PRECHARGE = group("precharge", Circuit.PRECHARGE, LimitRule.PRECHARGE_TIME);
    private static final TestGroup ISOLATION = group("isolation", Circuit.LIVE, LimitRule.ISOLATION);

    private static TestGroup group(String name, @Nullable Circuit circuit, LimitRule rule) {
        Wording says = Wording.english(name);
        Demand demand = new Demand.Computed(rule, BigDecimal.ZERO);
        KitTest test = new KitTest(name, says, Condition.ALWAYS, List.of(), false, says, "meter", demand, null);
        return new TestGroup(name, says, circuit, says, List.of(), List.of(test));
    }

    private static List<String> remarks(TestGroup... groups) {
        return TestOrder.of("van", Stream.of(groups).toList())
                .map(remark -> remark.about() + ": " + remark.found())
                .toList();
    }

    @Test
    void dead_then_contactors_open_then_precharge_then_live() {
        assertThat(remarks(BONDING, INSULATION, STRINGS, PRECHARGE, ISOLATION)).isEmpty();
        assertThat(remarks(INSULATION, BONDING, STRINGS)).isEmpty();
        assertThat(remarks()).isEmpty();
    }

    @Test
    void a_dead_test_behind_a_live_one_is_out_of_order() {
        assertThat(remarks(INSULATION, PRECHARGE, ISOLATION, BONDING))
                .containsExactly("test group van/bonding: made 'dead', behind 'isolation', made 'live'");
    }

    @Test
    void a_precharge_behind_a_live_test_is_out_of_order() {
        assertThat(remarks(INSULATION, ISOLATION, PRECHARGE))
                .containsExactly("test group van/precharge: made 'precharge', behind 'isolation', made 'live'");
    }

    @Test
    void no_contactor_closes_before_the_dead_circuit_is_tried_for_insulation() {
        assertThat(remarks(BONDING, PRECHARGE, ISOLATION))
                .containsExactly(
                        "test group van/precharge: made 'precharge' with no insulation test of the dead circuit"
                                + " before it");
    }

    @Test
    void a_group_says_what_the_circuit_is_like() {
        assertThat(remarks(INSULATION, group("look", null, LimitRule.BONDING)))
                .containsExactly("test group van/look: no 'circuit'");
    }
}
