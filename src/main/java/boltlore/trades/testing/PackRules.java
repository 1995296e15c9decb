package boltlore.trades.testing;

import boltlore.catalogue.Buses;
import boltlore.catalogue.Outlet;
import boltlore.catalogue.Pack;
import boltlore.measure.Digits;
import boltlore.trades.charging.Bonding;
import boltlore.trades.charging.Isolation;
import boltlore.trades.charging.Precharge;
import java.math.BigDecimal;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;

/** Limits that come from the pack and its link. The formulas stand in {@code charging}, each with its source. */
final class PackRules {

    private static final int KILO = 3;
    private static final int MEGA = 6;

    private final PackFigures figures;

    PackRules(PackFigures figures) {
        this.figures = figures;
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
        return isolation(KILO, "kohm");
    }

    /** The same, as an insulation tester shows it of the circuit without the pack. */
    Figure deadIsolation() {
        return isolation(MEGA, "Mohm");
    }

    private Figure isolation(int digits, String unit) {
        Pack pack = figures.pack();
        Buses buses = figures.buses();
        if (pack == null || buses == null) {
            return Figure.missing(NotKnown.PACK);
        }
        BigDecimal ohm = Isolation.limitOhm(buses, pack.highestVolts());
        String basis =
                Digits.plain(Isolation.ohmPerVolt(buses)) + " ohm/V × " + Digits.plain(pack.highestVolts()) + " V";
        return Figure.least(ohm.movePointLeft(digits), unit, basis);
    }

    @Nullable
    BigDecimal suitedOhm() {
        return figures.suitedOhm();
    }

    Limit.@Nullable Between volts() {
        Pack pack = figures.pack();
        return pack == null ? null : new Limit.Between(pack.lowestVolts(), pack.highestVolts());
    }

    /** {@link Precharge}: t = −R C ln(1 − k). */
    Figure prechargeTime() {
        Precharge precharge = figures.precharge();
        if (precharge == null) {
            return Figure.missing(NotKnown.PRECHARGE);
        }
        String basis = "-R C ln(1 - k), R = " + Digits.plain(precharge.resistorOhm()) + " ohm, C = "
                + Digits.plain(precharge.microfarad()) + " µF, k = " + Precharge.GATE;
        return Figure.of(precharge.secondsToGate().movePointRight(KILO), "ms", basis);
    }

    static Figure prechargeVolts() {
        return Figure.least(Precharge.GATE.movePointRight(2), "%", "Vc / Vb");
    }

    Figure tripAmps() {
        return trip(Outlet::tripMilliamps, "mA");
    }

    Figure tripTime() {
        return trip(Outlet::withinMilliseconds, "ms");
    }

    private Figure trip(ToIntFunction<Outlet> read, String unit) {
        Outlet outlet = figures.outlet();
        return outlet == null
                ? Figure.missing(NotKnown.TRIP)
                : Figure.most(BigDecimal.valueOf(read.applyAsInt(outlet)), unit, "");
    }
}
