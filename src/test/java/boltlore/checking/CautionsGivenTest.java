package boltlore.checking;

import static boltlore.sketch.PartSketch.bought;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Joined;
import boltlore.sketch.PartSketch;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CautionsGivenTest {

    @Test
    void a_part_with_high_voltage_connectors_says_so() {
        assertThat(Remarked.in(bought("P-1").port("battery")))
                .containsExactly("part P-1: high voltage without its caution");
        assertThat(Remarked.in(bought("P-1").port("battery").cautions("high-voltage")))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"UN 3480, true", "UN3481, true", "UN 2794, false"})
    void a_lithium_battery_says_so_and_a_lead_one_need_not(String un, boolean doubtful) {
        assertThat(Remarked.in(bought("P-1").transport(un)))
                .isEqualTo(doubtful ? List.of("part P-1: lithium battery without its caution") : List.of());
        assertThat(Remarked.in(bought("P-1").transport(un).cautions("lithium")))
                .isEqualTo(doubtful ? List.of() : List.of("part P-1: battery without its UN number"));
    }

    /** Two persons 40 kg: common practice, no source. */
    @Test
    void above_40_kg_gear_lifts_and_not_two_people() {
        assertThat(Remarked.in(bought("P-1").massKg("40.001").cautions("lift-two")))
                .containsExactly("part P-1: heavy without its caution");
        assertThat(Remarked.in(bought("P-1").massKg("40").cautions("lift-two"))).isEmpty();
        assertThat(Remarked.in(bought("P-1").massKg("40.001").cautions("lift-gear")))
                .isEmpty();
    }

    /** One person 25 kg: reference mass of ISO 11228-1, from memory. */
    @Test
    void above_25_kg_two_people_lift() {
        assertThat(Remarked.in(bought("P-1").massKg("25.001"))).containsExactly("part P-1: heavy without its caution");
        assertThat(Remarked.in(bought("P-1").massKg("25.000"))).isEmpty();
        assertThat(Remarked.in(bought("P-1").massKg("25.001").cautions("lift-two")))
                .isEmpty();
    }

    @Test
    void an_assembly_is_lifted_with_all_that_is_in_it() {
        assertThat(Remarked.in(
                        bought("A-1").contains("P-1", "3"),
                        bought("P-1").massKg("10").cost("0")))
                .containsExactly("part A-1: heavy without its caution");
    }

    @Test
    void what_is_measured_out_is_not_lifted_by_the_unit() {
        assertThat(Remarked.in(bought("P-1").massKg("30").unit("m"))).isEmpty();
    }

    @Test
    void a_welded_part_says_so_and_a_bolted_one_need_not() {
        assertThat(Remarked.in(welded(Joined.WELDED), bought("P-1").cost("0")))
                .containsExactly("part A-1: welded without its caution");
        assertThat(Remarked.in(
                        welded(Joined.WELDED).cautions("welding"), bought("P-1").cost("0")))
                .isEmpty();
        assertThat(Remarked.in(welded(Joined.BOLTED), bought("P-1").cost("0"))).isEmpty();
    }

    private static PartSketch welded(Joined joined) {
        return bought("A-1").contains("P-1", "2").joined(joined);
    }
}
