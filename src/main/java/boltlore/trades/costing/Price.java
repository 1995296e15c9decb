package boltlore.trades.costing;

import boltlore.measure.Percent;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * What something sells for. Mark-up is a share of the cost, margin a share of the price; they are never the same figure.
 * Identities of cost-accounting textbooks: price = cost × (1 + mark-up) = cost / (1 − margin).
 */
public final class Price {

    private Price() {}

    /** Cost × (1 + mark-up), rounded half-up to the minor unit. */
    public static BigDecimal withMarkUp(BigDecimal cost, BigDecimal markUpPercent, MinorUnit unit) {
        return unit.round(cost.multiply(Percent.plus(markUpPercent)));
    }

    /** The price that leaves this margin: cost / (1 − margin), rounded half-up to the minor unit. */
    public static BigDecimal forMargin(BigDecimal cost, BigDecimal marginPercent, MinorUnit unit) {
        return unit.round(cost.divide(Percent.rest(marginPercent), MathContext.DECIMAL128));
    }
}
