/** The order document: who, which family, which choices, what becomes of unused brackets. Reads no file. */
@NullMarked
package boltlore.order;

import org.jspecify.annotations.NullMarked;
