package boltlore.json;

import java.util.Arrays;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Currencies that people pay with, by their codes (ISO 4217): those of countries today, no metal, fund or test code. */
public final class CurrencyReading {

    public static final String EXPECTED = "a currency that some country pays with today (ISO 4217)";
    public static final String ADVICE = "EUR, GBP and USD are such.";

    /** Stands in for a currency that could not be read: the code for 'no currency'. */
    private static final Currency NONE = Currency.getInstance("XXX");

    private CurrencyReading() {}

    public static Currency read(ObjectReader reader, String key) {
        Currency currency = checked(reader, key, reader.text(key, TextShape.CURRENCY));
        return currency == null ? NONE : currency;
    }

    public static @Nullable Currency find(ObjectReader reader, String key) {
        return checked(reader, key, reader.findText(key, TextShape.CURRENCY).orElse(""));
    }

    private static @Nullable Currency checked(ObjectReader reader, String key, String code) {
        Optional<Currency> currency = known(code);
        if (currency.isEmpty() && !code.isEmpty()) {
            reader.faultAt(key, "'" + code + "'", EXPECTED, ADVICE);
        }
        return currency.orElse(null);
    }

    /** The currency of that code, if one of today's countries pays with it. */
    public static Optional<Currency> known(String code) {
        return Arrays.stream(Locale.getISOCountries())
                .map(country -> Currency.getInstance(new Locale("", country)))
                .filter(currency ->
                        currency != null && currency.getCurrencyCode().equals(code))
                .findFirst();
    }
}
