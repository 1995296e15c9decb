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

    private enum Column {
        ID,
        CHECK,
        DIRECTION,
        SUPPLY_PHASES,
        INLET_PHASES,
        CHARGER_PHASES,
        VOLTAGE_V,
        VOLTAGE_IS,
        SUPPLY_A,
        CABLE_A,
        INLET_A,
        CHARGER_A,
        CONTINUOUS_FACTOR,
        EXPECTED_POWER_W,
        TOLERANCE_ABS
    }

    @ParameterizedTest(name = "{0} {1}: {13} W; {16}")
    @CsvFileSource(resources = "/checkvalues/charging-power.csv", numLinesToSkip = 1)
    void power_is_the_least_phases_times_the_voltage_times_the_least_current(ArgumentsAccessor row) {
        List<Link> chain = List.of(
                link(row, Column.SUPPLY_PHASES, Column.SUPPLY_A),
                new Link("cable", null, number(row, Column.CABLE_A)),
                link(row, Column.INLET_PHASES, Column.INLET_A),
                link(row, Column.CHARGER_PHASES, Column.CHARGER_A));

        Power power = Power.through(chain, voltage(row)).orElseThrow();

        BigDecimal factor = number(row, Column.CONTINUOUS_FACTOR);
        assertThat(factor == null ? power.watts() : power.wattsForHours(factor))
                .isCloseTo(number(row, Column.EXPECTED_POWER_W), within(number(row, Column.TOLERANCE_ABS)));
    }

    private static Voltage voltage(ArgumentsAccessor row) {
        BigDecimal volts = number(row, Column.VOLTAGE_V);
        return row.getString(Column.VOLTAGE_IS.ordinal()).equals("line to line")
                ? new Voltage.BetweenLines(volts)
                : new Voltage.OfOnePhase(volts);
    }

    private static Link link(ArgumentsAccessor row, Column phases, Column amps) {
        return new Link(phases.name(), row.getInteger(phases.ordinal()), number(row, amps));
    }

    private static BigDecimal number(ArgumentsAccessor row, Column column) {
        return row.getBigDecimal(column.ordinal());
    }
}
