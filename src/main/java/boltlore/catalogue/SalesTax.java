package boltlore.catalogue;

import boltlore.measure.Wording;
import java.math.BigDecimal;

/**
 * A tax that a quotation shows apart.
 *
 * @param because a sentence for the customer: whose rate it is, or why none is charged
 */
public record SalesTax(Wording says, BigDecimal percent, Wording because) {}
