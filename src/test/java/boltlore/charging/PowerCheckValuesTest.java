package boltlore.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Charging and export power agree with public summaries of IEC 62196-2, IEC 61851-1 and SAE J1772")
class PowerCheckValuesTest {

    private static final int SUPPLY_PHASES = 3;
    private static final int INLET_PHASES = 4;
    private static final int CHARGER_PHASES = 5;
    private static final int VOLTAGE_V = 6;
    private static final int VOLTAGE_IS = 7;
    private static final int SUPPLY_A = 8;
    private static final int CABLE_A = 9;
    private static final int INLET_A = 10;
    private static final int CHARGER_A = 11;
    private static final int CONTINUOUS_FACTOR = 12;
    private static final int EXPECTED_POWER_W = 13;
    private static final int TOLERANCE_ABS = 14;

    @ParameterizedTest(name = "{0} {1}: {13} W; {16}")
    @CsvFileSource(resources = "/checkvalues/charging-power.csv", numLinesToSkip = 1)
    void power_is_the_least_phases_times_the_voltage_times_the_least_current(ArgumentsAccessor row) {
        List<Link> chain = List.of(
                link(row, SUPPLY_PHASES, SUPPLY_A),
                new Link("cable", null, number(row, CABLE_A)),
                link(row, INLET_PHASES, INLET_A),
                link(row, CHARGER_PHASES, CHARGER_A));

        Power power = Power.through(chain, voltage(row)).orElseThrow();

        BigDecimal factor = number(row, CONTINUOUS_FACTOR);
        assertThat(factor == null ? power.watts() : power.wattsForHours(factor))
                .isCloseTo(number(row, EXPECTED_POWER_W), within(number(row, TOLERANCE_ABS)));
    }

    private static Voltage voltage(ArgumentsAccessor row) {
        BigDecimal volts = number(row, VOLTAGE_V);
        return row.getString(VOLTAGE_IS).equals("line to line")
                ? new Voltage.BetweenLines(volts)
                : new Voltage.OfOnePhase(volts);
    }

    private static Link link(ArgumentsAccessor row, int phases, int amps) {
        return new Link("link", row.getInteger(phases), number(row, amps));
    }

    private static BigDecimal number(ArgumentsAccessor row, int column) {
        return row.get(column, BigDecimal.class);
    }
}
