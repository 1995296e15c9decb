/**
 * Sheets of a workbook as plain values: cells with what stands in them and where. Whatever program wrote the file, it reads
 * the same from here on. Nothing here opens a file.
 *
 * <p>Open Document is read from content.xml by Java's own parser: libraries for it bring a whole object model, or are not
 * kept; a list needs cells, hidden rows and merged blocks.
 */
@NullMarked
package boltlore.grid;

import org.jspecify.annotations.NullMarked;
