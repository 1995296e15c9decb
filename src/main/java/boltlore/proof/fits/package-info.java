/**
 * Whether what a kit holds can be joined and put in its place, in every valid order: energy paths and circuits, ports,
 * boxes, shafts, quantities that follow. None of it decides on a kit, so rules say nothing of it.
 */
@NullMarked
package boltlore.proof.fits;

import org.jspecify.annotations.NullMarked;
