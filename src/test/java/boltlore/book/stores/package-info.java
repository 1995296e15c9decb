/** What the stores and the rooms do with the book, in a file and on a server. */
@NullMarked
package boltlore.book.stores;

import org.jspecify.annotations.NullMarked;
