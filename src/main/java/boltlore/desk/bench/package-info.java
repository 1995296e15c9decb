/** The room that tests vehicles, packs crates and writes their papers. */
@NullMarked
package boltlore.desk.bench;

import org.jspecify.annotations.NullMarked;
