/** Which chain of steps sets the lead time, how much slack the others have, and what shortening one would gain. */
@NullMarked
package boltlore.trades.costing.path;

import org.jspecify.annotations.NullMarked;
