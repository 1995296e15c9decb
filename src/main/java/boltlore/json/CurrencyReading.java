package boltlore.json;

import java.util.Currency;
import org.jspecify.annotations.Nullable;

/** Currencies by their codes (ISO 4217). */
public final class CurrencyReading {

    /** Stands in for a currency that could not be read: the code for 'no currency'. */
    private static final Currency NONE = Currency.getInstance("XXX");

    private CurrencyReading() {}

    public static Currency read(ObjectReader reader, String key) {
        String code = reader.text(key, TextShape.CURRENCY);
        Currency currency = known(code);
        if (currency == null && !code.isEmpty()) {
            reader.faultAt(key, "'" + code + "'", "a currency in use (ISO 4217)", "EUR, GBP and USD are such.");
        }
        return currency == null ? NONE : currency;
    }

    public static @Nullable Currency find(ObjectReader reader, String key) {
        return reader.find(key).isPresent() ? read(reader, key) : null;
    }

    private static @Nullable Currency known(String code) {
        try {
            return code.isEmpty() ? null : Currency.getInstance(code);
        } catch (IllegalArgumentException unknown) {
            return null;
        }
    }
}
