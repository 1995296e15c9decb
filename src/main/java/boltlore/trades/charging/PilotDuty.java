package boltlore.trades.charging;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/**
 * The duty cycle of the control pilot, in %, and the current that it allows (IEC 61851-1, Annex A, as quoted in a tester
 * manual; that above 3 to 7 % is digital and above 96 to 97 % still 80 A from memory).
 */
public sealed interface PilotDuty {

    /** That current may be drawn in each phase, in A. */
    record Allows(BigDecimal amps) implements PilotDuty {}

    /** The station wants to talk first. */
    record DigitalOnly() implements PilotDuty {}

    /** Nothing may be drawn. */
    record NoCharging() implements PilotDuty {}

    /**
     * 8 to 10 %: 6 A; 10 to 85 %: 0.6 × duty; above 85 to 96 %: 2.5 × (duty − 64).
     *
     * @param percent from 0 to 100
     * @throws IllegalArgumentException where it lies outside
     */
    static PilotDuty of(BigDecimal percent) {
        if (percent.signum() < 0 || percent.compareTo(Line.ALL) > 0) {
            throw new IllegalArgumentException("A duty cycle from 0 to 100 %, not " + percent.toPlainString());
        }
        if (percent.compareTo(Line.LEAST) >= 0 && percent.compareTo(Line.MOST) <= 0) {
            return new Allows(Line.amps(percent));
        }
        return percent.compareTo(Line.DIGITAL_FROM) > 0 && percent.compareTo(Line.DIGITAL_TO) <= 0
                ? new DigitalOnly()
                : new NoCharging();
    }

    /**
     * The duty cycle in % that offers a current. Between 51 and 52.5 A no duty cycle says so exactly; 85 % offers 51 A.
     *
     * @param amps from 6 to 80; empty outside
     */
    static Optional<BigDecimal> offering(BigDecimal amps) {
        boolean sayable = amps.compareTo(Line.LEAST_AMPS) >= 0 && amps.compareTo(Line.MOST_AMPS) <= 0;
        return sayable ? Optional.of(Line.percent(amps)) : Optional.empty();
    }

    /** The two straight lines and where they end. */
    final class Line {
        static final BigDecimal DIGITAL_FROM = BigDecimal.valueOf(3);
        static final BigDecimal DIGITAL_TO = BigDecimal.valueOf(7);
        static final BigDecimal LEAST = BigDecimal.valueOf(8);
        static final BigDecimal MOST = BigDecimal.valueOf(97);
        static final BigDecimal ALL = BigDecimal.valueOf(100);
        static final BigDecimal LEAST_AMPS = BigDecimal.valueOf(6);
        static final BigDecimal MOST_AMPS = BigDecimal.valueOf(80);
        private static final BigDecimal FIRST_TO = BigDecimal.valueOf(85);
        private static final BigDecimal SLOPE = new BigDecimal("0.6");
        private static final BigDecimal STEEP = new BigDecimal("2.5");
        private static final BigDecimal STEEP_FROM = BigDecimal.valueOf(64);

        private Line() {}

        static BigDecimal amps(BigDecimal percent) {
            return percent.compareTo(FIRST_TO) <= 0
                    ? percent.multiply(SLOPE).max(LEAST_AMPS)
                    : percent.subtract(STEEP_FROM).multiply(STEEP).min(MOST_AMPS);
        }

        static BigDecimal percent(BigDecimal amps) {
            BigDecimal steep = amps.divide(STEEP, MathContext.DECIMAL128).add(STEEP_FROM);
            return steep.compareTo(FIRST_TO) > 0
                    ? steep
                    : amps.divide(SLOPE, MathContext.DECIMAL128).min(FIRST_TO);
        }
    }
}
