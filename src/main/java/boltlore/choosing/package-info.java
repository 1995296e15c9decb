/**
 * What a customer may still choose and why not, the smallest changes that open it, the best kits that keep what is chosen.
 * Knows no solver and prints nothing.
 */
@NullMarked
package boltlore.choosing;

import org.jspecify.annotations.NullMarked;
