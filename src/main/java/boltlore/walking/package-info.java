/**
 * Ways of walking a block of parallel aisles with a cross aisle at both ends, and how long each is. Knows lengths only: no bin,
 * no part, no order.
 */
@NullMarked
package boltlore.walking;

import org.jspecify.annotations.NullMarked;
