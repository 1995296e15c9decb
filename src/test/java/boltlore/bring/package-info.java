@NullMarked
package boltlore.bring;

import org.jspecify.annotations.NullMarked;
