/**
 * The way of finished sheets to the disk: all of them or nothing, and nothing that somebody has changed is lost. Only what a
 * manifest names and nobody has touched is replaced; moves go by a journal, so that the next run can undo a killed one's.
 *
 * <p>What is the program's to replace is a file that still has the hash that the folder's {@code .boltlore/written.json}
 * names. A power cut is not covered.
 */
@NullMarked
package boltlore.exports;

import org.jspecify.annotations.NullMarked;
