/** When many orders are finished with what the work centres can do, and in which weeks that is too little. */
@NullMarked
package boltlore.trades.scheduling;

import org.jspecify.annotations.NullMarked;
