/** Tests of the csv writer on the worked example and on text that means harm. */
@NullMarked
package boltlore.report.csv;

import org.jspecify.annotations.NullMarked;
