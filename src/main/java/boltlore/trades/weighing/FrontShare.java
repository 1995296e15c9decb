package boltlore.trades.weighing;

import boltlore.catalogue.Donor;
import java.math.BigDecimal;

/**
 * The share of the mass on the front axle beside the least that is wanted there.
 *
 * @param ofFamily whether the family says so, and not common practice
 */
public record FrontShare(BigDecimal percent, BigDecimal leastPercent, boolean ofFamily) {

    /** Below 40 % in front steering and braking suffer: common practice, no source. */
    public static final BigDecimal USUAL_LEAST = BigDecimal.valueOf(40);

    static FrontShare of(AxleLoads loads, Donor donor) {
        BigDecimal own = donor.leastFrontPercent();
        return new FrontShare(loads.frontPercent(), own == null ? USUAL_LEAST : own, own != null);
    }

    public boolean tooLow() {
        return percent.compareTo(leastPercent) < 0;
    }
}
