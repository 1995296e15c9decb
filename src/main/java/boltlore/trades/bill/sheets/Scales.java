package boltlore.trades.bill.sheets;

import java.math.BigDecimal;
import java.util.stream.Stream;

/** How many digits after the point a column needs so that nothing is hidden. */
final class Scales {

    private Scales() {}

    /** The most that any of the numbers has, within bounds. */
    static int fit(Stream<BigDecimal> numbers, int least, int most) {
        int needed = numbers.mapToInt(number ->
                        number.signum() == 0 ? 0 : number.stripTrailingZeros().scale())
                .max()
                .orElse(0);
        return Math.max(least, Math.min(most, needed));
    }
}
