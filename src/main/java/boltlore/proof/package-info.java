/** Statements about all valid orders of a family, each proved or refuted by an order. Resolves no order and reads no file. */
@NullMarked
package boltlore.proof;

import org.jspecify.annotations.NullMarked;
