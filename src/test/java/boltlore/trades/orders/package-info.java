@NullMarked
package boltlore.trades.orders;

import org.jspecify.annotations.NullMarked;
