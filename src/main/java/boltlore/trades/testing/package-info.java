/** What is tested of one finished kit, with which limits, and what the readings come to. Reads no file, knows no sheet. */
@NullMarked
package boltlore.trades.testing;

import org.jspecify.annotations.NullMarked;
