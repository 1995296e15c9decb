/** Tests of the xlsx writer on the worked example and on text that means harm. */
@NullMarked
package boltlore.report.xlsx;

import org.jspecify.annotations.NullMarked;
