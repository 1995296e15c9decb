package boltlore.trades.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.power.Link;
import boltlore.power.Power;
import boltlore.power.Voltage;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Charging and export power agree with public summaries of IEC 62196-2, IEC 61851-1 and SAE J1772")
class PowerCheckValuesTest {

    static Stream<CheckRow> rows() {
        String[] all = IntStream.rangeClosed(1, 16)
                .mapToObj(i -> String.format("CP-%02d", i))
                .toArray(String[]::new);
        return CheckTable.rows("charging-power.csv", all);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void power_is_the_least_phases_times_the_voltage_times_the_least_current(CheckRow row) {
        Power power = Power.through(chain(row), voltage(row)).orElseThrow();

        BigDecimal watts = power.wattsForHours(row.numberOr("continuous_factor", BigDecimal.ONE));
        assertThat(watts).isCloseTo(row.number("expected_power_w"), within(row.number("tolerance_abs")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void a_chain_that_says_no_current_has_no_power(CheckRow row) {
        List<Link> silent = chain(row).stream()
                .map(link -> new Link(link.says(), link.phases(), null))
                .toList();

        assertThat(Power.through(silent, voltage(row))).isEmpty();
    }

    private static List<Link> chain(CheckRow row) {
        return List.of(
                link(row, "supply"),
                new Link("cable", null, amps(row, "cable")),
                link(row, "inlet"),
                link(row, "charger"));
    }

    private static Link link(CheckRow row, String name) {
        return new Link(name, Integer.valueOf(row.text(name + "_phases")), amps(row, name));
    }

    private static @Nullable BigDecimal amps(CheckRow row, String name) {
        return row.has(name + "_a") ? row.number(name + "_a") : null;
    }

    private static Voltage voltage(CheckRow row) {
        BigDecimal volts = row.number("voltage_v");
        return row.text("voltage_is").equals("line to line")
                ? new Voltage.BetweenLines(volts)
                : new Voltage.OfOnePhase(volts);
    }
}
