/** Statements about whole families, tried against the demo families, broken copies of them, and worked examples. */
@NullMarked
package boltlore.proof;

import org.jspecify.annotations.NullMarked;
