/** Questions about all orders of a family at once, in the catalogue's own terms. The only importer of the SAT library. */
@NullMarked
package boltlore.logic;

import org.jspecify.annotations.NullMarked;
