package boltlore.trades.costing;

import boltlore.measure.Money;
import java.math.BigDecimal;
import java.util.Currency;

/** Rounds half-up to the minor unit of one currency (cents). */
public record MinorUnit(Currency currency) {

    public BigDecimal round(BigDecimal amount) {
        return Money.rounded(amount, currency);
    }

    /** Digits after the point. */
    public int digits() {
        return Money.digits(currency);
    }
}
