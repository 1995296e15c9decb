/** The workshop's knowledge as checked records: options, limits, positions, lines, parts. Reads no file. */
@NullMarked
package boltlore.catalogue;

import org.jspecify.annotations.NullMarked;
