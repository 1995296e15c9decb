/** Tests of the text writer on the worked example and on text that means harm. */
@NullMarked
package boltlore.sheets.text;

import org.jspecify.annotations.NullMarked;
