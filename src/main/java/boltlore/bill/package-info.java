/** The kit as a multi-level bill: where each item stands, quantities, masses, costs. Knows no sheet. */
@NullMarked
package boltlore.bill;

import org.jspecify.annotations.NullMarked;
