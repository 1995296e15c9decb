package boltlore.trades.testing;

import boltlore.catalogue.Buses;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Role;
import boltlore.choices.Choices;
import boltlore.measure.Digits;
import boltlore.power.ChosenPower;
import boltlore.power.Power;
import boltlore.trades.charging.Isolation;
import boltlore.trades.charging.PilotDuty;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/** Limits that come from the mains side: the customer's supply, inlet, charger and V2L outlet. */
final class MainsRules {

    private static final int MEGA = 6;
    private static final int KILO = 3;

    private final Choices choices;

    MainsRules(Choices choices) {
        this.choices = choices;
    }

    /** {@link Isolation} of an inlet, with the voltage between two lines where there are three phases. */
    Figure isolation() {
        return volts().map(volts -> Figure.least(
                        Isolation.inletOhm(volts).movePointLeft(MEGA),
                        "Mohm",
                        Digits.plain(Isolation.INLET_OHM.movePointLeft(MEGA)) + " Mohm; " + basis(volts)))
                .orElseGet(() -> Figure.missing(NotKnown.SUPPLY));
    }

    /** {@link Isolation} of an AC bus alone. */
    Figure isolationPerVolt() {
        return volts().map(MainsRules::isolation).orElseGet(() -> Figure.missing(NotKnown.SUPPLY));
    }

    private Optional<BigDecimal> volts() {
        Facts supply = choices.facts(Role.SUPPLY).or(choices.facts(Role.INLET));
        boolean three = supply.phases() != null && supply.phases() == 3;
        return Optional.ofNullable(supply.volts()).map(volts -> three ? betweenLines(volts) : volts);
    }

    /** The same with the voltage of the V2L outlet. */
    Figure exportIsolation() {
        BigDecimal volts = choices.facts(Role.EXPORT).volts();
        return volts == null ? Figure.missing(NotKnown.SOCKET) : isolation(volts);
    }

    private static Figure isolation(BigDecimal volts) {
        BigDecimal ohm = Isolation.limitOhm(Buses.SEPARATE_AC, volts);
        return Figure.least(ohm.movePointLeft(MEGA), "Mohm", basis(volts));
    }

    private static String basis(BigDecimal volts) {
        return Digits.plain(Isolation.ohmPerVolt(Buses.SEPARATE_AC)) + " ohm/V × " + Digits.plain(volts) + " V";
    }

    /** √3 times the voltage of one phase, rounded to a volt. */
    private static BigDecimal betweenLines(BigDecimal volts) {
        return volts.multiply(BigDecimal.valueOf(3).sqrt(MathContext.DECIMAL64)).setScale(0, RoundingMode.HALF_UP);
    }

    /** {@link PilotDuty} that offers the current of the customer's supply. */
    Figure pilotDuty() {
        return Optional.ofNullable(choices.facts(Role.SUPPLY).amps())
                .flatMap(amps ->
                        PilotDuty.offering(amps).map(percent -> Figure.of(percent, "%", Digits.plain(amps) + " A")))
                .orElseGet(() -> Figure.missing(NotKnown.SUPPLY));
    }

    /** What the weakest of supply, inlet and charger lets through, in each phase. */
    Figure chargeAmps() {
        return charging()
                .map(power -> Figure.most(power.amps(), "A", says(power)))
                .orElseGet(() -> Figure.missing(NotKnown.SUPPLY));
    }

    Figure chargePower() {
        return charging()
                .map(power -> Figure.of(power.watts().movePointLeft(KILO), "kW", says(power)))
                .orElseGet(() -> Figure.missing(NotKnown.SUPPLY));
    }

    /** In figures alone, which every language reads. */
    private static String says(Power power) {
        return power.phases() + " × " + Digits.plain(power.volts()) + " V × " + Digits.plain(power.amps()) + " A";
    }

    private Optional<Power> charging() {
        return ChosenPower.charging(choices);
    }

    Figure exportVolts() {
        BigDecimal volts = choices.facts(Role.EXPORT).volts();
        return volts == null ? Figure.missing(NotKnown.SOCKET) : Figure.of(volts, "V", "");
    }
}
