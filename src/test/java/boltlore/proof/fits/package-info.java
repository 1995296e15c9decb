/** Planted defects: what does not fit is found in every order that has it, and nothing else is. */
@NullMarked
package boltlore.proof.fits;

import org.jspecify.annotations.NullMarked;
