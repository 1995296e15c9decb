package boltlore.trades.picking;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {

    @ParameterizedTest
    @ValueSource(strings = {"m", "l", "kg"})
    void lengths_volumes_and_masses_are_measured_out(String unit) {
        assertThat(Units.measured(unit)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"each", "set"})
    void pieces_and_sets_are_counted(String unit) {
        assertThat(Units.measured(unit)).isFalse();
    }
}
