package boltlore.weighing;

import boltlore.catalogue.Chassis;
import boltlore.catalogue.Station;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;

/**
 * How many kilograms may still go to one station before a limit is reached, and which limit that is.
 *
 * @param kg below 0 where a limit is exceeded already
 */
public record PayloadLeft(BigDecimal kg, Limited first) {

    /** Each kilogram there adds (1 − station / wheelbase) to the front axle and station / wheelbase to the rear one. */
    static PayloadLeft of(AxleLoads loads, Chassis chassis, Station at) {
        AxleLoads one = Loads.balance(BigDecimal.ONE, at).on(BigDecimal.valueOf(chassis.wheelbaseMm()));
        return List.of(
                        left(Limited.FRONT, chassis.frontLimitKg().subtract(loads.frontKg()), one.frontKg()),
                        left(Limited.REAR, chassis.rearLimitKg().subtract(loads.rearKg()), one.rearKg()),
                        left(Limited.GROSS, chassis.grossKg().subtract(loads.totalKg()), BigDecimal.ONE))
                .stream()
                .filter(left -> left != NEVER)
                .min(Comparator.comparing(PayloadLeft::kg))
                .orElse(NEVER);
    }

    /** A load that lightens an axle never reaches that axle's limit. */
    private static final PayloadLeft NEVER = new PayloadLeft(BigDecimal.ZERO, Limited.GROSS);

    private static PayloadLeft left(Limited limited, BigDecimal leftKg, BigDecimal perKg) {
        return perKg.signum() <= 0 ? NEVER : new PayloadLeft(leftKg.divide(perKg, MathContext.DECIMAL128), limited);
    }
}
