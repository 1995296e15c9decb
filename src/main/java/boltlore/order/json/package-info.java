/** Reads and writes order files. Whether a finding may be waived is not decided here. */
@NullMarked
package boltlore.order.json;

import org.jspecify.annotations.NullMarked;
