/** What stores hand out for one kit, where they walk for it and what goes into which bag. Knows no stock. */
@NullMarked
package boltlore.trades.picking;

import org.jspecify.annotations.NullMarked;
