/** How the converted vehicle drives: road load, top speed, range, gradients and acceleration, against what is promised. */
@NullMarked
package boltlore.trades.driving;

import org.jspecify.annotations.NullMarked;
