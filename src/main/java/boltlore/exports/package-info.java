/** The way of finished sheets to the disk: written aside, then moved; all of a folder or nothing. */
@NullMarked
package boltlore.exports;

import org.jspecify.annotations.NullMarked;
