package boltlore.trades.weighing;

import boltlore.catalogue.Chassis;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

/** A load beside its limit, both in kg. */
public record Check(Stand stand, Limited limited, BigDecimal loadKg, BigDecimal limitKg) {

    static Stream<Check> of(Standing standing, Chassis chassis) {
        AxleLoads loads = standing.loads();
        return List.of(
                new Check(standing.stand(), Limited.FRONT, loads.frontKg(), chassis.frontLimitKg()),
                new Check(standing.stand(), Limited.REAR, loads.rearKg(), chassis.rearLimitKg()),
                new Check(standing.stand(), Limited.GROSS, loads.totalKg(), chassis.grossKg()))
                .stream();
    }

    /** What may still come; below 0 where the limit is exceeded. */
    public BigDecimal leftKg() {
        return limitKg.subtract(loadKg);
    }

    public boolean exceeded() {
        return leftKg().signum() < 0;
    }
}
