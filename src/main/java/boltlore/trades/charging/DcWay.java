package boltlore.trades.charging;

import boltlore.catalogue.DirectLimit;
import boltlore.catalogue.Pack;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Charging on direct current: the least of what inlet and pack take, at the pack's nominal voltage. */
final class DcWay {

    private static final int KILO = 3;

    /** Of the energy that the post gives nearly all reaches the pack. */
    private static final BigDecimal ALL = BigDecimal.valueOf(100);

    private DcWay() {}

    static Optional<DcCharging> find(Fitted fitted) {
        return through(fitted.direct(), fitted.pack());
    }

    private static Optional<DcCharging> through(@Nullable DirectLimit inlet, @Nullable Pack pack) {
        if (inlet == null || pack == null) {
            return Optional.empty();
        }
        BigDecimal amps = inlet.amps().min(pack.chargeAmps());
        BigDecimal kilowatts = amps.multiply(pack.nominalVolts()).movePointLeft(KILO);
        return Optional.of(new DcCharging(
                amps, kilowatts, ChargingTime.hours(pack, kilowatts, ALL), limits(inlet.amps(), pack.chargeAmps())));
    }

    private static String limits(BigDecimal inletAmps, BigDecimal packAmps) {
        int compared = inletAmps.compareTo(packAmps);
        String names = compared < 0 ? "The inlet limits" : compared > 0 ? "The pack limits" : "Inlet and pack limit";
        return names + " the current to " + NumberFormats.amps(inletAmps.min(packAmps)) + ".";
    }
}
