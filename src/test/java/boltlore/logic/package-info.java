/** Proves what is asked of all orders of a family: by enumeration, by definition, by an independent solver. */
@NullMarked
package boltlore.logic;

import org.jspecify.annotations.NullMarked;
