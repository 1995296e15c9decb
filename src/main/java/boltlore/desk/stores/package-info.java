/** The room that keeps parts: what lies where, what is short, what comes in and goes out. */
@NullMarked
package boltlore.desk.stores;

import org.jspecify.annotations.NullMarked;
