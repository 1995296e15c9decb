package boltlore.cutting.packing;

import java.math.BigInteger;
import java.util.BitSet;
import java.util.List;

/** Which sums bought bars can cost at all: a bound between two such sums may be raised to the higher one. */
final class Affordable {

    private static final int MOST_SUMS = 5_000_000;

    private static final Affordable EVERY_SUM = new Affordable(1, new BitSet());

    private final long unit;
    private final BitSet sums;

    private Affordable(long unit, BitSet sums) {
        this.unit = unit;
        this.sums = sums;
    }

    /** All sums up to that one and one bar more; where they are too many, every sum counts as affordable. */
    static Affordable upTo(long most, List<Stock> stocks) {
        long[] costs = costs(stocks);
        long unit = 0;
        long dearest = 0;
        for (long cost : costs) {
            unit = BigInteger.valueOf(unit).gcd(BigInteger.valueOf(cost)).longValue();
            dearest = Math.max(dearest, cost);
        }
        long sums = unit == 0 ? Long.MAX_VALUE : (most + dearest) / unit;
        return sums > MOST_SUMS ? EVERY_SUM : new Affordable(unit, sums(costs, unit, (int) sums));
    }

    private static long[] costs(List<Stock> stocks) {
        return stocks.stream()
                .filter(Stock::isBought)
                .mapToLong(Stock::cost)
                .filter(cost -> cost > 0)
                .distinct()
                .toArray();
    }

    private static BitSet sums(long[] costs, long unit, int most) {
        BitSet sums = new BitSet(most + 1);
        sums.set(0);
        for (int sum = 0; sum >= 0; sum = sums.nextSetBit(sum + 1)) {
            for (long cost : costs) {
                if (sum + cost / unit <= most) {
                    sums.set((int) (sum + cost / unit));
                }
            }
        }
        return sums;
    }

    /** The least affordable sum that is not under the bound. */
    long atLeast(long bound) {
        int found = sums.nextSetBit((int) Math.min(Integer.MAX_VALUE, (bound + unit - 1) / unit));
        return found < 0 ? bound : found * unit;
    }
}
