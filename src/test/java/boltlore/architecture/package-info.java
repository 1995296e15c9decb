/** What holds for the whole of the code: who may use whom, which library stands where, how long things may grow. */
@NullMarked
package boltlore.architecture;

import org.jspecify.annotations.NullMarked;
