package boltlore.trades.cutting.packing;

import boltlore.measure.BinBound;
import boltlore.measure.BinBound.Sized;
import java.math.BigInteger;
import java.util.List;

/** Costs that no packing can be under, worked out in whole numbers. */
final class Bounds {

    private static final double SCALE = 1e6;

    private Bounds() {}

    /** By length alone. */
    static long byLength(Task task) {
        return byValue(task, task.kinds().stream().mapToLong(PieceType::length).toArray());
    }

    /** By prices of the kinds, as a linear program gives them; any prices do, good ones bound well. */
    static long byPrices(Task task, double[] prices) {
        long[] values = new long[task.kinds().size()];
        for (int kind = 0; kind < values.length; kind++) {
            values[kind] = (long) Math.floor(Math.max(0, prices[kind]) * SCALE);
        }
        return byValue(task, values);
    }

    /**
     * Give every kind a value. No bar yields more value than its knapsack, so what the bars at hand cannot yield is bought
     * at the best rate of value for money: the duality of linear programming. Source: A. A. Farley, A note on bounding a
     * class of linear programming problems, Operations Research 38 (1990), from memory.
     */
    private static long byValue(Task task, long[] values) {
        SlantedKnapsack most = SlantedKnapsack.bounding(task, task.counts(), values);
        BigInteger sum = wanted(task, values);
        Stock best = null;
        for (Stock stock : task.stocks()) {
            if (stock.isBought()) {
                best = best == null || yieldsMore(stock, best, most) ? stock : best;
            } else {
                sum = sum.subtract(product(most.value(stock.room()), stock.most()));
            }
        }
        return best == null || sum.signum() <= 0 ? 0 : overUp(sum, best.cost(), most.value(best.room()));
    }

    private static BigInteger wanted(Task task, long[] values) {
        BigInteger sum = BigInteger.ZERO;
        for (int kind = 0; kind < values.length; kind++) {
            sum = sum.add(product(values[kind], task.kinds().get(kind).count()));
        }
        return sum;
    }

    private static boolean yieldsMore(Stock one, Stock other, SlantedKnapsack most) {
        return product(most.value(one.room()), other.cost()).compareTo(product(most.value(other.room()), one.cost()))
                > 0;
    }

    private static BigInteger product(long one, long other) {
        return BigInteger.valueOf(one).multiply(BigInteger.valueOf(other));
    }

    private static long overUp(BigInteger sum, long cost, long value) {
        BigInteger divisor = BigInteger.valueOf(value);
        return sum.multiply(BigInteger.valueOf(cost))
                .add(divisor.subtract(BigInteger.ONE))
                .divide(divisor)
                .longValueExact();
    }

    /** Bars that are needed at least where all have one room. */
    static long bars(List<PieceType> kinds, long room) {
        return BinBound.least(
                kinds.stream()
                        .map(kind -> new Sized(kind.length(), kind.count()))
                        .toList(),
                room);
    }
}
