/**
 * Textbook netting: what is asked for, by period and through levels, against what is at hand and on its way. Knows numbers and
 * item names only; who asks and what is done about it is said above.
 */
@NullMarked
package boltlore.netting;

import org.jspecify.annotations.NullMarked;
