/** The answers of one order as checked values; never strings again after parsing. */
@NullMarked
package boltlore.choices;

import org.jspecify.annotations.NullMarked;
