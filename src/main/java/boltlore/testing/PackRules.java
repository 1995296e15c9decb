package boltlore.testing;

import boltlore.catalogue.Buses;
import boltlore.charging.Bonding;
import boltlore.charging.Isolation;
import boltlore.charging.Precharge;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Limits that come from the pack and its link. The formulas stand in {@code charging}, each with its source. */
final class PackRules {

    private static final String NO_PACK = "voltage of the pack not known";
    private static final int KILO = 3;

    private final Optional<PackFigures> pack;

    PackRules(Optional<PackFigures> pack) {
        this.pack = pack;
    }

    /** {@link Bonding}: UN Regulation 100. */
    static Figure bonding() {
        return new Figure(Bonding.LIMIT_OHM, true, "ohm", "");
    }

    static Figure bondingAmps() {
        return Figure.of(Bonding.LEAST_AMPS, "A", "");
    }

    /** {@link Isolation}: UN Regulation 100, with the highest voltage that the pack reaches. */
    Figure isolation() {
        return pack.map(figures -> {
                    BigDecimal volts = figures.highestVolts();
                    BigDecimal perVolt = Isolation.ohmPerVolt(figures.buses());
                    BigDecimal ohm = Isolation.limitOhm(figures.buses(), volts);
                    return Figure.of(
                            ohm.movePointLeft(KILO), "kohm", Figure.plain(perVolt) + " ohm/V × " + Figure.plain(volts) + " V");
                })
                .orElseGet(() -> Figure.missing(NO_PACK));
    }

    /** What the known resistor should about be, in ohm: limit in ohm per volt times nominal voltage. */
    static BigDecimal suitedOhm(Buses buses, BigDecimal nominalVolts) {
        return Isolation.ohmPerVolt(buses).multiply(nominalVolts);
    }

    /** {@link Precharge}: t = −R C ln(1 − k). */
    Figure prechargeTime() {
        return pack.map(PackFigures::precharge)
                .map(precharge -> Figure.of(
                        precharge.secondsToGate().movePointRight(KILO),
                        "ms",
                        "-R C ln(1 - k), R = " + Figure.plain(precharge.resistorOhm()) + " ohm, C = "
                                + Figure.plain(precharge.microfarad()) + " µF, k = " + Precharge.GATE))
                .orElseGet(() -> Figure.missing("precharge resistor and capacitance not known"));
    }

    static Figure prechargeVolts() {
        return Figure.of(Precharge.GATE.movePointRight(2), "%", "Vc / Vb");
    }

    Figure tripAmps() {
        return trip(PackFigures::tripMilliamps, "mA", "rated residual current");
    }

    Figure tripTime() {
        return trip(PackFigures::tripMilliseconds, "ms", "rated time to cut off");
    }

    private Figure trip(Function<PackFigures, @Nullable BigDecimal> read, String unit, String what) {
        return pack.map(read)
                .map(value -> Figure.of(value, unit, ""))
                .orElseGet(() -> Figure.missing(what + " not known"));
    }
}
