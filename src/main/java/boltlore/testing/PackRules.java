package boltlore.testing;

import boltlore.charging.Bonding;
import boltlore.charging.Isolation;
import boltlore.charging.Precharge;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Limits that come from the pack and its link. The formulas stand in {@code charging}, each with its source. */
final class PackRules {

    private static final int KILO = 3;

    private final Optional<PackFigures> pack;

    PackRules(Optional<PackFigures> pack) {
        this.pack = pack;
    }

    /** {@link Bonding}: UN Regulation 100. */
    static Figure bonding() {
        return new Figure(Bonding.LIMIT_OHM, true, "ohm", "", null);
    }

    static Figure bondingAmps() {
        return Figure.least(Bonding.LEAST_AMPS, "A", "");
    }

    /** {@link Isolation}: UN Regulation 100, with the highest voltage that the pack reaches. */
    Figure isolation() {
        return pack.map(figures -> {
                    BigDecimal volts = figures.highestVolts();
                    BigDecimal perVolt = Isolation.ohmPerVolt(figures.buses());
                    BigDecimal ohm = Isolation.limitOhm(figures.buses(), volts);
                    return Figure.least(
                            ohm.movePointLeft(KILO),
                            "kohm",
                            Figure.plain(perVolt) + " ohm/V × " + Figure.plain(volts) + " V");
                })
                .orElseGet(() -> Figure.missing(NotKnown.PACK));
    }

    @Nullable
    BigDecimal suitedOhm() {
        return pack.map(PackFigures::suitedOhm).orElse(null);
    }

    /** {@link Precharge}: t = −R C ln(1 − k). */
    Figure prechargeTime() {
        return pack.map(PackFigures::precharge)
                .map(precharge -> Figure.of(
                        precharge.secondsToGate().movePointRight(KILO),
                        "ms",
                        "-R C ln(1 - k), R = " + Figure.plain(precharge.resistorOhm()) + " ohm, C = "
                                + Figure.plain(precharge.microfarad()) + " µF, k = " + Precharge.GATE))
                .orElseGet(() -> Figure.missing(NotKnown.PRECHARGE));
    }

    static Figure prechargeVolts() {
        return Figure.least(Precharge.GATE.movePointRight(2), "%", "Vc / Vb");
    }

    Figure tripAmps() {
        return trip(PackFigures::tripMilliamps, "mA");
    }

    Figure tripTime() {
        return trip(PackFigures::tripMilliseconds, "ms");
    }

    private Figure trip(Function<PackFigures, @Nullable BigDecimal> read, String unit) {
        return pack.map(read).map(value -> Figure.most(value, unit, "")).orElseGet(() -> Figure.missing(NotKnown.TRIP));
    }
}
