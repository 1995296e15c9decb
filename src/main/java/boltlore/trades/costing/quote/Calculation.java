package boltlore.trades.costing.quote;

import boltlore.catalogue.Profit;
import boltlore.trades.costing.cost.FullCost;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How a quotation came about; for the workshop only.
 *
 * @param reckoned price of the kit in the workshop's currency before it was turned into another and rounded to a step
 */
public record Calculation(FullCost cost, Profit profit, BigDecimal reckoned, Quotation quotation) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** What the customer pays before tax, in the workshop's currency, unrounded. */
    public BigDecimal netAtHome() {
        return quotation.rate() == null
                ? quotation.net()
                : quotation.net().divide(quotation.rate().forOne(), MathContext.DECIMAL128);
    }

    /** What is left after the full cost; below 0 where the quotation makes a loss. */
    public BigDecimal left() {
        return netAtHome().subtract(cost.total());
    }

    /** The margin that discount and rounding leave: what is left in per cent of the price, two decimals; 0 of no price. */
    public BigDecimal marginLeftPercent() {
        BigDecimal net = netAtHome();
        return net.signum() == 0
                ? BigDecimal.ZERO
                : left().multiply(HUNDRED).divide(net, MathContext.DECIMAL128).setScale(2, RoundingMode.HALF_UP);
    }
}
