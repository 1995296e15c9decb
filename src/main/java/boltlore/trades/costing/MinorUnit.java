package boltlore.trades.costing;

import boltlore.measure.Money;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.stream.Stream;

/** Rounds half-up to the minor unit of one currency (cents). */
public record MinorUnit(Currency currency) {

    public BigDecimal round(BigDecimal amount) {
        return Money.rounded(amount, currency);
    }

    /** Digits after the point. */
    public int digits() {
        return Money.digits(currency);
    }

    /** As many as these numbers have, so that nothing is hidden; at least those of the unit. */
    public int digits(Stream<BigDecimal> numbers, int most) {
        int needed = numbers.mapToInt(number ->
                        number.signum() == 0 ? 0 : number.stripTrailingZeros().scale())
                .max()
                .orElse(0);
        return Math.max(digits(), Math.min(most, needed));
    }
}
