package boltlore.trades.cutting.packing;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;

/**
 * Which sums bought bars can cost at all, and how much room each sum buys at most: a bound between two such sums may be
 * raised to the next one that buys enough room.
 */
final class Affordable {

    private static final int MOST_SUMS = 1_000_000;

    private static final Affordable EVERY_SUM = new Affordable(1, new long[0]);

    private final long unit;
    private final long[] rooms;

    private Affordable(long unit, long[] rooms) {
        this.unit = unit;
        this.rooms = rooms;
    }

    /** All sums up to that one and one bar more; where they are too many, every sum counts as affordable. */
    static Affordable upTo(long most, List<Stock> stocks) {
        List<Stock> bought = stocks.stream().filter(Stock::isBought).toList();
        long unit = 0;
        long dearest = 0;
        for (Stock stock : bought) {
            unit = BigInteger.valueOf(unit)
                    .gcd(BigInteger.valueOf(stock.cost()))
                    .longValue();
            dearest = Math.max(dearest, stock.cost());
        }
        long sums = unit == 0 ? Long.MAX_VALUE : (most + dearest) / unit;
        return sums > MOST_SUMS ? EVERY_SUM : new Affordable(unit, rooms(bought, unit, (int) sums));
    }

    private static long[] rooms(List<Stock> bought, long unit, int most) {
        long[] rooms = new long[most + 1];
        Arrays.fill(rooms, 1, rooms.length, -1);
        for (int sum = 1; sum <= most; sum++) {
            for (Stock stock : bought) {
                long before = sum - stock.cost() / unit;
                if (before >= 0 && rooms[(int) before] >= 0) {
                    rooms[sum] = Math.max(rooms[sum], rooms[(int) before] + stock.room());
                }
            }
        }
        return rooms;
    }

    /**
     * The least affordable sum that is not under the bound and buys enough room; the bound itself where none is known.
     *
     * @param room what the bought bars must hold
     */
    long atLeast(long bound, long room) {
        for (long sum = (bound + unit - 1) / unit; sum < rooms.length; sum++) {
            if (rooms[(int) sum] >= Math.max(0, room)) {
                return sum * unit;
            }
        }
        return bound;
    }
}
