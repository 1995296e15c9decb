package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;

/**
 * A battery pack of equal modules.
 *
 * @param moduleVolts nominal voltage of one module in V
 * @param moduleAmpHours capacity of one module in Ah
 * @param inSeries modules in one string
 * @param inParallel strings side by side
 * @param highestVolts fully charged, in V
 * @param lowestVolts empty, in V
 * @param resistanceMilliohm of the whole pack as it is connected, in mΩ
 * @param usableKwh between what the vehicle calls empty and full, in kWh
 * @param continuousAmps that it bears for hours, either way
 * @param peakAmps that it bears for a short time, at least what it bears for hours
 * @param chargeAmps that it takes at most while charged
 */
public record Pack(
        String name,
        String says,
        Condition when,
        PartNumber module,
        BigDecimal moduleVolts,
        BigDecimal moduleAmpHours,
        int inSeries,
        int inParallel,
        BigDecimal highestVolts,
        BigDecimal lowestVolts,
        BigDecimal resistanceMilliohm,
        BigDecimal usableKwh,
        BigDecimal continuousAmps,
        BigDecimal peakAmps,
        BigDecimal chargeAmps) {

    private static final int WH_IN_KWH = 3;

    public int modules() {
        return inSeries * inParallel;
    }

    public BigDecimal nominalVolts() {
        return moduleVolts.multiply(BigDecimal.valueOf(inSeries));
    }

    /** Nominal voltage times capacity, in kWh. */
    public BigDecimal nominalKwh() {
        return nominalVolts()
                .multiply(moduleAmpHours)
                .multiply(BigDecimal.valueOf(inParallel))
                .movePointLeft(WH_IN_KWH);
    }
}
