/** Tables in CSV texts (RFC 4180), read cell by cell. What the cells mean is for those who asked for them. */
@NullMarked
package boltlore.csv;

import org.jspecify.annotations.NullMarked;
