/**
 * What every trade is to the program: its command, its options, what it makes of the kits of one or several orders. Each
 * trade lives in a package of its own below; those know this one, and this one knows none of them.
 *
 * <p>Nothing is estimated: counts of orders are exact or given up, packing and coating say their bounds, and limits are
 * rounded to the strict side. What stops a shipment or fails a test is told, and the papers are written all the same,
 * headed 'draft'; a test record is bound by a hash to the limits that it was filled in for.
 */
@NullMarked
package boltlore.trades;

import org.jspecify.annotations.NullMarked;
