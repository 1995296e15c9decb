/**
 * One settled order becomes one kit: lines, parts with reasons, quantities, findings. Neither disk nor clock.
 *
 * <p>Quantities are summed beside the rules and again in the bill, for expectations ask 'how many' before there is a bill;
 * a test holds the two together.
 */
@NullMarked
package boltlore.resolution;

import org.jspecify.annotations.NullMarked;
