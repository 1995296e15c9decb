package boltlore.cli;

import boltlore.asking.AskedHead;
import boltlore.order.json.OrderReader;
import java.math.BigDecimal;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a discount in per cent, within what an order may say. */
final class DiscountGiven implements ITypeConverter<BigDecimal> {

    @Override
    public BigDecimal convert(String written) {
        if (!AskedHead.PERCENT.matcher(written).matches()) {
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
