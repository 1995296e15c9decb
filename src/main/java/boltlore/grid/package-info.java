/**
 * Sheets of a workbook as plain values: cells with what stands in them and where. Whatever program wrote the file, it reads
 * the same from here on. Nothing here opens a file.
 */
@NullMarked
package boltlore.grid;

import org.jspecify.annotations.NullMarked;
