package boltlore.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;

/** An amount of money, exact; rounded only by {@link #toMinorUnit()}. */
public record Money(BigDecimal amount, Currency currency) {

    public static Money zero(Currency currency) {
        return new Money(BigDecimal.ZERO, currency);
    }

    public Money plus(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException("Cannot add " + other.currency + " to " + currency);
        }
        return new Money(amount.add(other.amount), currency);
    }

    public Money times(BigDecimal factor) {
        return new Money(amount.multiply(factor), currency);
    }

    /** Rounded half-up to the currency's minor unit (cents). */
    public Money toMinorUnit() {
        return new Money(
                amount.setScale(Math.max(0, currency.getDefaultFractionDigits()), RoundingMode.HALF_UP), currency);
    }

    @Override
    public String toString() {
        return currency.getCurrencyCode() + " " + amount.toPlainString();
    }
}
