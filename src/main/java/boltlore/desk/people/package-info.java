/** Who works at a desk: passwords and roles. Alone knows the library that hashes passwords. */
@NullMarked
package boltlore.desk.people;

import org.jspecify.annotations.NullMarked;
