/**
 * Work of many orders put onto work centres that can do only so much a day, and what no order of that work can undercut.
 * Knows no kit, no catalogue and no sheet: times are whole minutes, days whole numbers, both from one first day.
 */
@NullMarked
package boltlore.trades.scheduling.finite;

import org.jspecify.annotations.NullMarked;
