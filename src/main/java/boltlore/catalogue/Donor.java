package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The donor vehicle.
 *
 * @param usual what holds in every body era that says nothing else
 * @param eras by the value of the option in role era
 * @param engineKw most power of the engine that comes off; null where nobody has told
 * @param leastFrontPercent share of the mass that the workshop wants on the front axle at least; null where it sets none
 */
public record Donor(
        Chassis usual,
        Map<String, Chassis> eras,
        @Nullable BigDecimal leastFrontPercent,
        @Nullable BigDecimal engineKw) {

    public Chassis in(String era) {
        return eras.getOrDefault(era, usual);
    }
}
