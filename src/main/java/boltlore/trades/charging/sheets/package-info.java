/** The charging and high-voltage sheet of one order: pages and words over what was worked out. Computes nothing itself. */
@NullMarked
package boltlore.trades.charging.sheets;

import org.jspecify.annotations.NullMarked;
