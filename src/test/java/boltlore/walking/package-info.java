/** Ways through the stores against published lengths, an exact search, and the laws of each rule. */
@NullMarked
package boltlore.walking;

import org.jspecify.annotations.NullMarked;
