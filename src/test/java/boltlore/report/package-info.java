/** Tests of the sheet model on one worked example; the writers' tests read the same example back. */
@NullMarked
package boltlore.report;

import org.jspecify.annotations.NullMarked;
