/** How much coolant flows in each circuit, and how warm it gets. */
@NullMarked
package boltlore.trades.cooling;

import org.jspecify.annotations.NullMarked;
