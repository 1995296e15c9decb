/**
 * Workshop drawings as values: lines, outlines, hatching and lettering on white, as SVG and as PNG. Knows nothing of what
 * it draws, no sheet and no font of the machine, so that every machine makes the same bytes.
 */
@NullMarked
package boltlore.report.drawing;

import org.jspecify.annotations.NullMarked;
