package boltlore.trades.charging;

import boltlore.catalogue.Capacitor;
import boltlore.catalogue.PrechargeResistor;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The capacitors of the DC link filled through a resistor (charging of a capacitor through a resistor, any textbook of
 * electrical engineering).
 *
 * <p>Logarithms are taken in binary and rounded to a microsecond, so every machine gives the same figure.
 *
 * @param resistorOhm of the precharge resistor, above 0
 * @param microfarad capacitance of all that hangs on the DC link, above 0
 */
public record Precharge(BigDecimal resistorOhm, BigDecimal microfarad) {

    /** The main contactor closes only at this share of the pack's voltage or above: common practice, no source. */
    public static final BigDecimal GATE = new BigDecimal("0.95");

    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final int MICRO = 6;

    public Precharge {
        Positive.number("resistorOhm", resistorOhm);
        Positive.number("microfarad", microfarad);
    }

    /** Of all capacitors that are fitted, through that resistor; null where there is none of the one or the other. */
    static @Nullable Precharge of(@Nullable PrechargeResistor resistor, List<Capacitor> capacitors) {
        BigDecimal microfarad = capacitors.stream().map(Capacitor::microfarad).reduce(BigDecimal.ZERO, BigDecimal::add);
        return resistor == null || microfarad.signum() == 0 ? null : new Precharge(resistor.ohm(), microfarad);
    }

    /** R × C in s. */
    public BigDecimal timeConstantSeconds() {
        return resistorOhm.multiply(farad());
    }

    /**
     * t = −R C ln(1 − k), in s.
     *
     * @param fraction k, of the pack's voltage, from 0 to below 1
     * @throws IllegalArgumentException where the fraction lies outside
     */
    public BigDecimal secondsTo(BigDecimal fraction) {
        if (fraction.signum() < 0 || fraction.compareTo(BigDecimal.ONE) >= 0) {
            throw new IllegalArgumentException("A fraction from 0 to below 1, not " + fraction.toPlainString());
        }
        double constants = -StrictMath.log1p(-fraction.doubleValue());
        return rounded(timeConstantSeconds().multiply(BigDecimal.valueOf(constants)));
    }

    /** Until the main contactor may close, in s. */
    public BigDecimal secondsToGate() {
        return secondsTo(GATE);
    }

    /** The share of the pack's voltage that is there after so many seconds: k = 1 − exp(−t/RC). */
    public BigDecimal fractionAfter(BigDecimal seconds) {
        double constants =
                seconds.divide(timeConstantSeconds(), MathContext.DECIMAL128).doubleValue();
        return rounded(BigDecimal.valueOf(-StrictMath.expm1(-constants)));
    }

    /** E = C V² / 2, in J: what one whole precharge leaves in the resistor as heat, whatever its resistance. */
    public BigDecimal joules(BigDecimal volts) {
        return farad().multiply(volts.pow(2)).divide(TWO, MathContext.DECIMAL128);
    }

    /** The current of the first moment, I = V / R, in A. */
    public BigDecimal firstAmps(BigDecimal volts) {
        return volts.divide(resistorOhm, MathContext.DECIMAL128);
    }

    /** E = V² t / R, in J: what a shorted link leaves in the resistor until the controller gives up. */
    public BigDecimal shortedJoules(BigDecimal volts, BigDecimal seconds) {
        return volts.pow(2).multiply(seconds).divide(resistorOhm, MathContext.DECIMAL128);
    }

    /** t = E R / V², in s: how soon the controller must give up so that a shorted link does not exceed that energy. */
    public BigDecimal longestSecondsShorted(BigDecimal volts, BigDecimal joules) {
        return joules.multiply(resistorOhm).divide(volts.pow(2), MathContext.DECIMAL128);
    }

    public static boolean mayClose(BigDecimal linkVolts, BigDecimal packVolts) {
        return linkVolts.compareTo(packVolts.multiply(GATE)) >= 0;
    }

    private BigDecimal farad() {
        return microfarad.movePointLeft(MICRO);
    }

    private static BigDecimal rounded(BigDecimal number) {
        return number.setScale(MICRO, RoundingMode.HALF_UP);
    }

    /** What is between the high-voltage poles and the chassis, added up. */
    public record YCapacitors(List<Capacitor> capacitors) {

        private static final int NANO = 9;

        public YCapacitors {
            capacitors = List.copyOf(capacitors);
        }

        boolean someNotGiven() {
            return capacitors.stream().anyMatch(capacitor -> capacitor.yNanofarad() == null);
        }

        public BigDecimal nanofarad() {
            return capacitors.stream()
                    .map(Capacitor::yNanofarad)
                    .filter(Objects::nonNull)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
        }

        /** E = C U² / 2, in J, with both poles' capacitors at the full voltage, so on the safe side. */
        public BigDecimal joules(BigDecimal volts) {
            return nanofarad().movePointLeft(NANO).multiply(volts.pow(2)).divide(TWO, MathContext.DECIMAL128);
        }
    }
}
