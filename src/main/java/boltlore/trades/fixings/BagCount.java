package boltlore.trades.fixings;

import boltlore.catalogue.Part;
import java.math.BigDecimal;

/**
 * So many of one fixing in one bag, for counting by weight.
 *
 * @param stage fit stage
 * @param bag name of the bag, or empty where it is packed loose
 * @param quantity that the kit needs
 * @param spares that lie with them
 * @param eachKg mass of one
 */
public record BagCount(String stage, String bag, Part part, BigDecimal quantity, BigDecimal spares, BigDecimal eachKg) {

    public BigDecimal count() {
        return quantity.add(spares);
    }

    public BigDecimal netKg() {
        return count().multiply(eachKg);
    }

    /** Whether the scale tells the count, with the mass as exact as the part master has it. */
    public boolean sure() {
        return CountByWeight.sure(count(), eachKg);
    }
}
