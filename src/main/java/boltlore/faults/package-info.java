/** What is wrong with an input, as values. Nothing here reads, prints or throws. */
@NullMarked
package boltlore.faults;

import org.jspecify.annotations.NullMarked;
