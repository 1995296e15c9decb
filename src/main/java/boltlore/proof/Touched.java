package boltlore.proof;

import boltlore.logic.Count;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * How many valid orders a defect touches.
 *
 * @param checkedBy how the number was found a second time, by other means; empty where it was not
 */
public record Touched(Count orders, Count all, String checkedBy) {

    /** Per cent of all valid orders to two digits; empty where one of them was not counted or there is none. */
    public Optional<BigDecimal> percent() {
        if (orders instanceof Count.Exactly some
                && all instanceof Count.Exactly every
                && every.orders().signum() > 0) {
            return Optional.of(new BigDecimal(some.orders())
                    .movePointRight(2)
                    .divide(new BigDecimal(every.orders()), 2, RoundingMode.HALF_UP));
        }
        return Optional.empty();
    }
}
