package boltlore.checking;

import static boltlore.sketch.PositionSketch.at;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Demand;
import boltlore.catalogue.EndOfLine;
import boltlore.catalogue.KitTest;
import boltlore.catalogue.LimitRule;
import boltlore.catalogue.TestGroup;
import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.PartSketch;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class BondingTestedTest {

    private static final String REMARK = "position van/box: high voltage without a test of bonding";

    private static List<String> remarks(PartSketch box, EndOfLine tests) {
        return Remarked.in(new CatalogueSketch()
                        .part(box)
                        .position(at("box").line("box", "BOX", "1"))
                        .endOfLine(tests))
                .stream()
                .filter(remark -> remark.contains("bonding"))
                .toList();
    }

    private static PartSketch box() {
        return PartSketch.bought("BOX").port("main").cautions("high-voltage");
    }

    private static EndOfLine tests(LimitRule rule, String... positions) {
        Wording says = Wording.english("Test");
        List<PositionName> at = Stream.of(positions).map(PositionName::new).toList();
        Demand demand = new Demand.Computed(rule, BigDecimal.ZERO);
        KitTest test = new KitTest("test", says, Condition.ALWAYS, at, false, says, "meter", demand, null);
        return new EndOfLine(
                Map.of(),
                List.of(new TestGroup("group", says, null, says, List.of(), List.of(test))),
                List.of(),
                List.of());
    }

    @Test
    void a_part_with_high_voltage_connectors_is_tried_for_bonding() {
        assertThat(remarks(box(), tests(LimitRule.BONDING, "other"))).containsExactly(REMARK);
        assertThat(remarks(box(), tests(LimitRule.BONDING, "box"))).isEmpty();
    }

    @Test
    void another_test_at_that_position_is_none_of_bonding() {
        assertThat(remarks(box(), tests(LimitRule.ISOLATION, "box"))).containsExactly(REMARK);
    }

    @Test
    void a_part_without_connectors_or_without_high_voltage_need_not_be_tried() {
        assertThat(remarks(PartSketch.bought("BOX").cautions("high-voltage"), tests(LimitRule.BONDING, "other")))
                .isEmpty();
        assertThat(remarks(PartSketch.bought("BOX").port("loop"), tests(LimitRule.BONDING, "other")))
                .isEmpty();
    }

    @Test
    void a_family_that_says_nothing_about_tests_is_left_alone() {
        assertThat(remarks(box(), EndOfLine.NONE)).isEmpty();
    }
}
