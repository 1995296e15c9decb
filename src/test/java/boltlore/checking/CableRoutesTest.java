package boltlore.checking;

import static boltlore.sketch.PositionSketch.at;
import static boltlore.sketch.PositionSketch.is;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Condition;
import boltlore.measure.PositionName;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.PartSketch;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CableRoutesTest {

    private static final String REMARK = "line van/cable: cable outside its route";
    private static final Condition LEFT = is("side", "left");
    private static final Condition EARLY = is("era", "early");

    @ParameterizedTest
    @CsvSource({"999, true", "1000, false", "1200, false", "1201, true"})
    void a_cable_is_as_long_as_its_route_needs_and_no_longer_than_its_slack(int lengthMm, boolean doubtful) {
        assertThat(cable(lengthMm, LEFT, sides())).isEqualTo(doubtful ? List.of(REMARK) : List.of());
    }

    @Test
    void a_route_of_the_other_side_does_not_concern_it() {
        assertThat(cable(1500, is("side", "right"), sides())).isEmpty();
    }

    @Test
    void a_route_that_may_be_asked_for_together_does() {
        assertThat(cable(1500, EARLY, sides())).containsExactly(REMARK);
    }

    @Test
    void a_route_that_a_limit_keeps_from_the_cable_does_not() {
        CatalogueSketch noEarlyLeft = sides().never(new Condition.All(List.of(EARLY, LEFT)));
        assertThat(cable(1500, EARLY, noEarlyLeft)).isEmpty();
    }

    @Test
    void a_position_that_may_be_filled_or_not_is_taken_both_ways() {
        Condition filled = new Condition.Filled(new PositionName("cable"));
        assertThat(cable(1500, filled, sides())).containsExactly(REMARK);
        assertThat(cable(1500, new Condition.Not(filled), sides())).containsExactly(REMARK);
    }

    private static CatalogueSketch sides() {
        return new CatalogueSketch().option("side", "left", "right").option("era", "early", "late");
    }

    private static List<String> cable(int lengthMm, Condition when, CatalogueSketch catalogue) {
        return Remarked.in(catalogue
                .part(PartSketch.bought("CA-1").lengthMm(lengthMm))
                .position(at("cable").route(LEFT, 1000, 200).line("cable", "CA-1", "1", when)));
    }
}
