/** The roof over the rooms: every class lives in a package of its own feature below this one, none lives here. */
@NullMarked
package boltlore;

import org.jspecify.annotations.NullMarked;
