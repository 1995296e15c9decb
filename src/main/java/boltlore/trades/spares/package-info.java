/** Which parts of a kit wear or age, when each is replaced, and where the next one comes from. */
@NullMarked
package boltlore.trades.spares;

import org.jspecify.annotations.NullMarked;
