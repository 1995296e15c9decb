/** The room that cuts, welds and coats. */
@NullMarked
package boltlore.desk.fabrication;

import org.jspecify.annotations.NullMarked;
