/** The room that looks after the catalogue: its parts, where they are used, and whether every order is sound. */
@NullMarked
package boltlore.desk.engineering;

import org.jspecify.annotations.NullMarked;
