package boltlore.cli;

import boltlore.order.json.OrderReader;
import java.math.BigDecimal;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a discount in per cent, within what an order may say. */
final class DiscountGiven implements ITypeConverter<BigDecimal> {

    private static final Pattern WRITTEN = Pattern.compile("[0-9]{1,3}(\\.[0-9]{1,4})?");

    /** Few digits, and no power of ten: such a number can be written out. */
    static boolean isWritten(String text) {
        return WRITTEN.matcher(text).matches();
    }

    @Override
    public BigDecimal convert(String written) {
        if (!isWritten(written)) {
            throw new TypeConversionException("'" + written + "' is not a percentage: write it as 2.5");
        }
        BigDecimal percent = new BigDecimal(written);
        if (percent.compareTo(OrderReader.MOST_DISCOUNT) > 0) {
            throw new TypeConversionException("a discount is from 0 to " + OrderReader.MOST_DISCOUNT.toPlainString()
                    + " per cent, not '" + written + "'");
        }
        return percent;
    }
}
