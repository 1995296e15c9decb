/**
 * Workshop drawings as values: lines, outlines, hatching and lettering on white, as SVG and as PNG. Knows nothing of what
 * it draws, no sheet and no font of the machine: its letters come along as outlines.
 *
 * <p>The letters are Liberation Sans, so that a server without fonts draws the same; SVG keeps text as text.
 */
@NullMarked
package boltlore.report.drawing;

import org.jspecify.annotations.NullMarked;
