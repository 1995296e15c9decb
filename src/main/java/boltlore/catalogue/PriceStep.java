package boltlore.catalogue;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Prices of kits are whole multiples of a step, such as 5.00, in the currency that is quoted. */
public record PriceStep(BigDecimal step, Way way) {

    /** Where a price between two steps goes. */
    public enum Way {
        UP(RoundingMode.CEILING),
        NEAREST(RoundingMode.HALF_UP);

        private final RoundingMode mode;

        Way(RoundingMode mode) {
            this.mode = mode;
        }
    }

    public BigDecimal round(BigDecimal price) {
        return price.divide(step, 0, way.mode).multiply(step);
    }
}
