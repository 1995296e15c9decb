package boltlore.cli;

import java.math.BigDecimal;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a discount in per cent: at least 0 and below 100. */
final class DiscountGiven implements ITypeConverter<BigDecimal> {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int MOST_DIGITS = 12;

    @Override
    public BigDecimal convert(String written) {
        BigDecimal percent = number(written);
        if (percent.signum() < 0 || percent.compareTo(HUNDRED) >= 0) {
            throw new TypeConversionException("a discount is at least 0 and below 100 per cent, not '" + written + "'");
        }
        return percent;
    }

    private static BigDecimal number(String written) {
        try {
            return new BigDecimal(written.length() > MOST_DIGITS ? "" : written);
        } catch (NumberFormatException none) {
            throw new TypeConversionException("'" + written + "' is no per cent: write it as 2.5");
        }
    }
}
