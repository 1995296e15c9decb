package boltlore.catalogue;

import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A cable of the high-voltage system with its load and the fuse ahead of it.
 *
 * @param position that holds the cable; where it is empty the branch is not there
 * @param loadAmps the largest current in A that flows for hours
 * @param volts the highest voltage in V that it bears, or null for that of the pack
 * @param fuse name of the fuse ahead of it in the vehicle, or null
 * @param derating the share of its current that the cable carries where it lies, from above 0 to 1
 * @param because why the cable is derated, or empty
 */
public record Branch(
        String name,
        String says,
        Condition when,
        PositionName position,
        BigDecimal loadAmps,
        @Nullable BigDecimal volts,
        @Nullable String fuse,
        PartNumber cable,
        BigDecimal derating,
        String because) {}
