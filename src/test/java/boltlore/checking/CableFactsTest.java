package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.catalogue.Catalogue;
import boltlore.demo.Demo;
import java.math.BigDecimal;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What copper of an area can carry, and bear in a short circuit. */
class CableFactsTest {

    /** IEC 60364-5-52, table B.52.12: single cores of copper with 90 °C, spaced in free air (method G); from memory. */
    @ParameterizedTest
    @CsvSource({"25, 182", "35, 226", "50, 275", "70, 353", "95, 430", "120, 500", "150, 577", "185, 661", "240, 781"})
    void a_current_is_held_against_that_of_a_single_core_in_free_air(String area, int amps) {
        assertThat(CableFacts.mostAmps(new BigDecimal(area), 90).intValueExact())
                .isCloseTo(amps, Percentage.withPercentage(4));
    }

    /** Hand-worked: √((125 − 30) / 60 × 324.5 / 359.5) = 1.195; 430 A × 1.195 = 514 A. */
    @Test
    void and_hotter_copper_carries_more() {
        assertThat(CableFacts.mostAmps(new BigDecimal("95"), 125).intValueExact())
                .isCloseTo(514, within(6));
    }

    /** IEC 60364-4-43, table 43A: 143 for copper with 90 °C insulation that may reach 250 °C. */
    @ParameterizedTest
    @CsvSource({"90, 143", "125, 123"})
    void the_heat_of_a_short_circuit_begins_at_the_temperature_in_use(int hottestC, int k) {
        assertThat(CableFacts.mostK(hottestC)).isEqualByComparingTo(new BigDecimal(k));
    }

    @Test
    void every_cable_of_the_demo_can_be() {
        Catalogue demo = Demo.catalogue();
        assertThat(CableFacts.remarks(demo)).isEmpty();
        assertThat(PackFacts.remarks(demo)).isEmpty();
        assertThat(ElectricLimitsUsual.remarks(demo)).isEmpty();
    }
}
