package boltlore.testing;

import boltlore.bill.Bill;
import boltlore.catalogue.Buses;
import boltlore.charging.Isolation;
import boltlore.charging.Precharge;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the limits of one kit are worked out from.
 *
 * @param nominalVolts of the pack
 * @param highestVolts that the pack reaches
 * @param precharge null where it is not known
 * @param tripMilliamps rated residual current of the export protection, null without an export socket
 * @param tripMilliseconds in which it must cut off, null without an export socket
 */
record PackFigures(
        BigDecimal nominalVolts,
        BigDecimal highestVolts,
        Buses buses,
        @Nullable Precharge precharge,
        @Nullable BigDecimal tripMilliamps,
        @Nullable BigDecimal tripMilliseconds) {

    /** What the known resistor of an isolation test should about be. */
    BigDecimal suitedOhm() {
        return Isolation.ohmPerVolt(buses).multiply(nominalVolts);
    }

    /** Empty where the family says nothing about the pack of this kit. */
    static Optional<PackFigures> of(Bill bill) {
        return Optional.empty();
    }
}
