package boltlore.power;

import java.math.BigDecimal;
import java.math.MathContext;

/** A mains voltage in V; the two usual statements of one three-phase supply differ by the root of three. */
public sealed interface Voltage {

    /** What one phase sees. */
    BigDecimal acrossOnePhase();

    /** Between a line and neutral, or of a single-phase supply. */
    record OfOnePhase(BigDecimal volts) implements Voltage {
        @Override
        public BigDecimal acrossOnePhase() {
            return volts;
        }
    }

    /** Between two lines of a three-phase supply. */
    record BetweenLines(BigDecimal volts) implements Voltage {
        private static final BigDecimal ROOT_OF_THREE = BigDecimal.valueOf(3).sqrt(MathContext.DECIMAL128);

        @Override
        public BigDecimal acrossOnePhase() {
            return volts.divide(ROOT_OF_THREE, MathContext.DECIMAL128);
        }
    }
}
