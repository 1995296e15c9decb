/** What the coating shop wrote down, read from files and held against the plan; judging it is for the package above. */
@NullMarked
package boltlore.trades.coating.written;

import org.jspecify.annotations.NullMarked;
