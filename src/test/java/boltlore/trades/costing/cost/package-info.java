/** Tests of what kits cost in full, how long they take and what is quoted. */
@NullMarked
package boltlore.trades.costing.cost;

import org.jspecify.annotations.NullMarked;
