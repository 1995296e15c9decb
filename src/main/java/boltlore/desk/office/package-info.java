/** The room that owns the day: what is due, late, short and waiting, and what the month has earned. */
@NullMarked
package boltlore.desk.office;

import org.jspecify.annotations.NullMarked;
