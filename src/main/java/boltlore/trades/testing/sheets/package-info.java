/** Test sheet, papers and test report of one kit: pages and words over a plan or a verdict. Computes nothing of its own. */
@NullMarked
package boltlore.trades.testing.sheets;

import org.jspecify.annotations.NullMarked;
