/** What a bill costs, what it sells for, when its parts must be ordered, what is to buy and to make. Knows no sheet. */
@NullMarked
package boltlore.trades.costing;

import org.jspecify.annotations.NullMarked;
