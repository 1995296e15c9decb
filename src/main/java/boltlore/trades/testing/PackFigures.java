package boltlore.trades.testing;

import boltlore.bill.Bill;
import boltlore.catalogue.Buses;
import boltlore.catalogue.Outlet;
import boltlore.catalogue.Pack;
import boltlore.trades.charging.Charging;
import boltlore.trades.charging.ChargingCalculation;
import boltlore.trades.charging.Isolation;
import boltlore.trades.charging.Precharge;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What the limits of one kit are worked out from; null where the family does not say it of this order.
 *
 * @param precharge resistor and capacitance of the link
 * @param outlet guard of the V2L outlet
 */
record PackFigures(
        @Nullable Pack pack,
        @Nullable Buses buses,
        @Nullable Precharge precharge,
        @Nullable Outlet outlet) {

    static PackFigures of(Bill bill) {
        Charging charging =
                ChargingCalculation.calculate(bill.resolved().choices().family().electrics(), bill, null, null);
        return new PackFigures(
                charging.fitted().pack(),
                charging.electrics().buses(),
                charging.precharge(),
                charging.fitted().outlet());
    }

    /** What the known resistor of an isolation test should about be. */
    @Nullable
    BigDecimal suitedOhm() {
        return pack == null || buses == null
                ? null
                : Isolation.ohmPerVolt(buses).multiply(pack.nominalVolts());
    }
}
