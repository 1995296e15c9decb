/**
 * What all orders together ask for against what the stores hold: what is bought from whom, made and coated, by when, and for
 * whom. Is told the stock and the day; keeps nothing.
 */
@NullMarked
package boltlore.trades.buying;

import org.jspecify.annotations.NullMarked;
