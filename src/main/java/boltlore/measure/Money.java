package boltlore.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Locale;

/** Amounts in a currency's own digits (ISO 4217): none of yen, two of euro, three of Kuwaiti dinar. */
public final class Money {

    private Money() {}

    /** Digits after the point. */
    public static int digits(Currency currency) {
        return Math.max(0, currency.getDefaultFractionDigits());
    }

    /** Rounded half-up to the currency's minor unit. */
    public static BigDecimal rounded(BigDecimal amount, Currency currency) {
        return amount.setScale(digits(currency), RoundingMode.HALF_UP);
    }

    /** '24,026.89', as people read it. */
    public static String figure(BigDecimal amount, Currency currency) {
        return String.format(Locale.ROOT, "%,." + digits(currency) + "f", rounded(amount, currency));
    }

    /** 'EUR 24,026.89'. */
    public static String says(BigDecimal amount, Currency currency) {
        return currency.getCurrencyCode() + " " + figure(amount, currency);
    }
}
