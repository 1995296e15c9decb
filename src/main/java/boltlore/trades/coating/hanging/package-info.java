/** Where the pieces of an oven load hang: a proposal in mm for people to hang by. Pure. */
@NullMarked
package boltlore.trades.coating.hanging;

import org.jspecify.annotations.NullMarked;
