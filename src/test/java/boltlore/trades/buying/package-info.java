/** What is bought, made and coated for orders together. */
@NullMarked
package boltlore.trades.buying;

import org.jspecify.annotations.NullMarked;
