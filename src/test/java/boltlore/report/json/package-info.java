/** Tests of the json writer on the worked example and on text that means harm. */
@NullMarked
package boltlore.report.json;

import org.jspecify.annotations.NullMarked;
