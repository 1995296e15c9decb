package boltlore.netting;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How much is asked for at a time. The usual rules of material requirements planning; the part's least order and its pack come
 * as they are bought.
 *
 * @param least of one lot, 0 where there is no least
 * @param multiple only whole multiples of it, above 0; or 0 where any quantity may be asked for
 * @param periods whose net requirements one lot covers, counted from the one in which it is needed; 1 or more
 */
public record LotRule(BigDecimal least, BigDecimal multiple, int periods) {

    public LotRule {
        if (least.signum() < 0 || multiple.signum() < 0 || periods < 1) {
            throw new IllegalArgumentException("least " + least + ", multiple " + multiple + ", periods " + periods);
        }
    }

    /** Lot for lot: what is needed. */
    public static final LotRule AS_NEEDED = new LotRule(BigDecimal.ZERO, BigDecimal.ZERO, 1);

    /** A fixed quantity; where one is not enough, as many of them as are. */
    public static LotRule fixed(BigDecimal quantity) {
        return new LotRule(quantity, quantity, 1);
    }

    /** The same, for the net requirements of so many periods in one lot. */
    public LotRule covering(int some) {
        return new LotRule(least, multiple, some);
    }

    /** The smallest lot that holds so much. */
    BigDecimal lot(BigDecimal needed) {
        BigDecimal wanted = needed.max(least);
        return multiple.signum() == 0
                ? wanted
                : wanted.divide(multiple, 0, RoundingMode.CEILING).multiply(multiple);
    }
}
