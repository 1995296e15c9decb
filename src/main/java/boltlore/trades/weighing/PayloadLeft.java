package boltlore.trades.weighing;

import boltlore.catalogue.Chassis;
import boltlore.catalogue.Station;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * How many kilograms may still go to one station before a limit is reached, and which limit that is.
 *
 * @param kg below 0 where a limit is exceeded already
 */
public record PayloadLeft(BigDecimal kg, Limited first) {

    /**
     * Each kilogram there adds (1 − station / wheelbase) to the front axle and station / wheelbase to the rear one; a
     * load that lightens an axle never reaches that axle's limit.
     */
    static PayloadLeft of(AxleLoads loads, Chassis chassis, Station at) {
        AxleLoads one = Balance.of(BigDecimal.ONE, at).on(BigDecimal.valueOf(chassis.wheelbaseMm()));
        PayloadLeft gross = new PayloadLeft(chassis.grossKg().subtract(loads.totalKg()), Limited.WHOLE);
        return Stream.of(
                        Stream.of(gross),
                        left(Limited.FRONT, chassis.frontLimitKg().subtract(loads.frontKg()), one.frontKg()),
                        left(Limited.REAR, chassis.rearLimitKg().subtract(loads.rearKg()), one.rearKg()))
                .flatMap(all -> all)
                .min(Comparator.comparing(PayloadLeft::kg))
                .orElse(gross);
    }

    private static Stream<PayloadLeft> left(Limited limited, BigDecimal leftKg, BigDecimal perKg) {
        return perKg.signum() <= 0
                ? Stream.empty()
                : Stream.of(new PayloadLeft(leftKg.divide(perKg, MathContext.DECIMAL128), limited));
    }
}
