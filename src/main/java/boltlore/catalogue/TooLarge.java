package boltlore.catalogue;

import java.math.BigDecimal;

/**
 * Who coats what does not go into an own oven, in the workshop's currency.
 *
 * @param pricePerM2 for each coat
 * @param freightPerKg there and back; 0 where the price holds it
 */
public record TooLarge(String coater, BigDecimal pricePerM2, BigDecimal freightPerKg) {

    /** Of a coater whose price holds the freight. */
    public TooLarge(String coater, BigDecimal pricePerM2) {
        this(coater, pricePerM2, BigDecimal.ZERO);
    }
}
