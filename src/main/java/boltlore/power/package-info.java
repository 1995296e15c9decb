/** What power passes a chain of supply, inlet, charger and outlet, as an order has chosen them. */
@NullMarked
package boltlore.power;

import org.jspecify.annotations.NullMarked;
