/** Writing sheets to a real disk: all or nothing, two at once, full, forbidden, interrupted. */
@NullMarked
package boltlore.exports;

import org.jspecify.annotations.NullMarked;
