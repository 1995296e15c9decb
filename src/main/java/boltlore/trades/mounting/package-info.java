/** Whether bolts and welds of the mounts of heavy parts bear shocks and the drive's torque. */
@NullMarked
package boltlore.trades.mounting;

import org.jspecify.annotations.NullMarked;
