/**
 * What every trade is to the program: its command, its options, what it makes of the kits of one or several orders. Each
 * trade lives in a package of its own below; those know this one, and this one knows none of them.
 */
@NullMarked
package boltlore.trades;

import org.jspecify.annotations.NullMarked;
