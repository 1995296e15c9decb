/** What choosing says, as JSON for other programs. */
@NullMarked
package boltlore.choosing.json;

import org.jspecify.annotations.NullMarked;
