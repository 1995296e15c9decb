/**
 * What is tested of one finished kit, with which limits, and what the readings come to: plan, sheets, empty records,
 * filled-in records read back, verdict, test report.
 */
@NullMarked
package boltlore.trades.testing;

import org.jspecify.annotations.NullMarked;
