package boltlore.cli;

import boltlore.json.CurrencyReading;
import java.util.Currency;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a currency by its code. */
final class CurrencyGiven implements ITypeConverter<Currency> {

    @Override
    public Currency convert(String code) {
        return CurrencyReading.known(code)
                .orElseThrow(() -> new TypeConversionException(
                        "'" + code + "' is not " + CurrencyReading.EXPECTED + ". " + CurrencyReading.ADVICE));
    }
}
