/**
 * What a kit is, said a second time in the plainest way: straight recursion over the catalogue's records. Works nothing
 * out by the code it is compared with; from there it takes only the records in which results are told.
 */
@NullMarked
package boltlore.oracle;

import org.jspecify.annotations.NullMarked;
