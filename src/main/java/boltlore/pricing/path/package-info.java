/** Which chain of steps sets the lead time, how much slack the others have, and what shortening one would gain. */
@NullMarked
package boltlore.pricing.path;

import org.jspecify.annotations.NullMarked;
