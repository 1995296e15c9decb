/**
 * What an order is asked for, and what an answer changes, in words and figures: the same in a terminal and on a page. Knows
 * neither of them.
 */
@NullMarked
package boltlore.asking;

import org.jspecify.annotations.NullMarked;
