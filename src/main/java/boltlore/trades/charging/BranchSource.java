package boltlore.trades.charging;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Branch.FedBy;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.LowVoltage;
import boltlore.catalogue.Pack;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What drives current into a branch.
 *
 * @param highestVolts between its conductors, in V
 * @param lowestVolts in V
 * @param shortCircuitKiloamps into a short at its terminals, or null where the mains or the charger set it
 */
record BranchSource(
        BigDecimal highestVolts,
        BigDecimal lowestVolts,
        int phases,
        @Nullable BigDecimal shortCircuitKiloamps) {

    /** Empty where pack or 12 V battery feed it and are not known. */
    static Optional<BranchSource> of(Branch branch, Electrics electrics, @Nullable Pack pack) {
        FedBy fedBy = branch.fedBy();
        if (fedBy instanceof FedBy.Mains mains) {
            return Optional.of(new BranchSource(mains.volts(), mains.volts(), mains.phases(), null));
        }
        if (fedBy instanceof FedBy.Charger charger) {
            return Optional.of(new BranchSource(charger.volts(), charger.volts(), 1, null));
        }
        if (fedBy instanceof FedBy.LowVoltage) {
            return Optional.ofNullable(electrics.lowVoltage()).map(BranchSource::of);
        }
        return Optional.ofNullable(pack)
                .map(known -> battery(known.highestVolts(), known.lowestVolts(), known.resistanceMilliohm()));
    }

    private static BranchSource of(LowVoltage network) {
        return battery(network.highestVolts(), network.lowestVolts(), network.resistanceMilliohm());
    }

    /** I = U / R of the full battery (Ohm's law), without the cable's own resistance, so on the safe side. */
    private static BranchSource battery(BigDecimal highest, BigDecimal lowest, BigDecimal milliohm) {
        return new BranchSource(highest, lowest, 1, highest.divide(milliohm, MathContext.DECIMAL128));
    }
}
