/** How long files and methods are, counted in lines that hold code. */
@NullMarked
package boltlore.architecture.size;

import org.jspecify.annotations.NullMarked;
