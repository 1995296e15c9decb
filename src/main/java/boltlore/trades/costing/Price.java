package boltlore.trades.costing;

import boltlore.measure.Percent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * What something sells for. Mark-up is a share of the cost, margin a share of the price; they are never the same figure.
 * Identities of cost-accounting textbooks: price = cost × (1 + mark-up) = cost / (1 − margin).
 *
 * @param markUpPercent on cost
 * @param price rounded half-up to the minor unit
 */
public record Price(BigDecimal cost, BigDecimal markUpPercent, BigDecimal price) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    public static Price of(BigDecimal cost, BigDecimal markUpPercent, MinorUnit unit) {
        return new Price(cost, markUpPercent, unit.round(cost.multiply(Percent.plus(markUpPercent))));
    }

    /** What the mark-up comes to in money. */
    public BigDecimal markUp() {
        return price.subtract(cost);
    }

    /** Mark-up / (1 + mark-up) in per cent of the price, two decimals, half-up. */
    public BigDecimal marginPercent() {
        return marginPercent(markUpPercent);
    }

    public static BigDecimal marginPercent(BigDecimal markUpPercent) {
        return Percent.fraction(markUpPercent)
                .divide(Percent.plus(markUpPercent), MathContext.DECIMAL128)
                .multiply(HUNDRED)
                .setScale(2, RoundingMode.HALF_UP);
    }

    /** The price that leaves this margin: cost / (1 − margin), rounded half-up to the minor unit. */
    public static BigDecimal forMargin(BigDecimal cost, BigDecimal marginPercent, MinorUnit unit) {
        return unit.round(cost.divide(Percent.rest(marginPercent), MathContext.DECIMAL128));
    }
}
