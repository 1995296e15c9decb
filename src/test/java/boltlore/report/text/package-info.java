/** Tests of the text writer on the worked example and on text that means harm. */
@NullMarked
package boltlore.report.text;

import org.jspecify.annotations.NullMarked;
