package boltlore.trades.costing.cost;

import boltlore.trades.costing.MinorUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** Divides an amount in proportion, in whole minor units, so that the shares add up to the amount. */
final class Shares {

    private Shares() {}

    /**
     * One share for each weight. Shares are differences of rounded running sums, so none is more than one minor unit off.
     *
     * @param weights 0 or more; where all are 0 the first bears all
     */
    static List<BigDecimal> split(BigDecimal amount, List<BigDecimal> weights, MinorUnit unit) {
        BigDecimal all = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        List<BigDecimal> shares = new ArrayList<>();
        BigDecimal running = BigDecimal.ZERO;
        BigDecimal given = BigDecimal.ZERO;
        for (BigDecimal weight : weights) {
            running = running.add(weight);
            BigDecimal upToHere = all.signum() == 0
                    ? amount
                    : unit.round(amount.multiply(running).divide(all, MathContext.DECIMAL128));
            shares.add(upToHere.subtract(given));
            given = upToHere;
        }
        return shares;
    }
}
