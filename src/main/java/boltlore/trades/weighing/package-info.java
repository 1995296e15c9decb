/** What a converted vehicle weighs on its axles, before and after, against its limits. Knows no sheet. */
@NullMarked
package boltlore.trades.weighing;

import org.jspecify.annotations.NullMarked;
