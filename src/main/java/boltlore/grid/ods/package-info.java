/**
 * Open Document spreadsheets (ISO/IEC 26300, ODF 1.3 part 3), read from their content.xml with Java's own streaming parser:
 * a list of parts needs cells, hidden rows and merged blocks of it, for which no library of its own is worth its weight.
 */
@NullMarked
package boltlore.grid.ods;

import org.jspecify.annotations.NullMarked;
