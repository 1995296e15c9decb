/** The shipped demo catalogue and its orders, read as the program reads them. */
@NullMarked
package boltlore.demo;

import org.jspecify.annotations.NullMarked;
