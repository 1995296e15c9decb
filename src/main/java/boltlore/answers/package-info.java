/** Answers to the rooms' questions about orders and parts, as values; no printing. */
@NullMarked
package boltlore.answers;

import org.jspecify.annotations.NullMarked;
