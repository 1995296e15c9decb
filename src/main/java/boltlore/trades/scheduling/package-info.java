/**
 * When many orders are finished with what the work centres can do, and in which weeks that is too little.
 *
 * <p>Steps and days are those of the lead time in the price, with hours of work centres added: alone in an empty workshop
 * both give one date. Where days off or hours make that impossible a finding says so, and the price stays.
 */
@NullMarked
package boltlore.trades.scheduling;

import org.jspecify.annotations.NullMarked;
