package boltlore.trades.weighing;

import boltlore.catalogue.Chassis;
import boltlore.catalogue.Removed;
import boltlore.catalogue.Station;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Height of the centre of gravity above the road in mm, before and after. Masses without a height stay out of it.
 *
 * @param unknownKg mass of what comes off or on without a height
 * @param tracksMm mean of front and rear track, or null where nobody measured
 */
public record CentreHeight(
        BigDecimal beforeMm,
        BigDecimal afterMm,
        BigDecimal unknownKg,
        @Nullable BigDecimal tracksMm) {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    /** Empty where the height of the donor's own centre of gravity is not known, or nothing of known height is left. */
    static Optional<CentreHeight> of(Chassis chassis, Weighing masses) {
        Integer donorMm = chassis.centreHeightMm();
        if (donorMm == null) {
            return Optional.empty();
        }
        Sum sum = new Sum(chassis.massKg(), chassis.massKg().multiply(BigDecimal.valueOf(donorMm)), BigDecimal.ZERO);
        for (Removed each : masses.removed()) {
            sum = sum.with(each.massKg().negate(), each.at());
        }
        for (Added each : masses.added()) {
            sum = sum.with(each.massKg(), each.at());
        }
        for (ExtraLoad each : masses.extras()) {
            sum = sum.with(each.massKg(), each.at());
        }
        return sum.massKg().signum() <= 0
                ? Optional.empty()
                : Optional.of(new CentreHeight(
                        BigDecimal.valueOf(donorMm), sum.middleMm(), sum.unknownKg(), tracksMm(chassis)));
    }

    private static @Nullable BigDecimal tracksMm(Chassis chassis) {
        Integer front = chassis.frontTrackMm();
        Integer rear = chassis.rearTrackMm();
        return front == null || rear == null
                ? null
                : BigDecimal.valueOf(front + (long) rear).divide(TWO);
    }

    public BigDecimal changeMm() {
        return afterMm.subtract(beforeMm);
    }

    /**
     * Half the mean track over the height of the centre of gravity: the static stability factor of road-vehicle safety
     * (NHTSA, rollover resistance ratings; from memory). Empty where the tracks are not known.
     */
    public static Optional<BigDecimal> stability(@Nullable BigDecimal tracksMm, BigDecimal heightMm) {
        return tracksMm == null
                ? Optional.empty()
                : Optional.of(tracksMm.divide(heightMm.multiply(TWO), MathContext.DECIMAL128));
    }

    /** Masses of known height with their moments about the road, and those of none. */
    private record Sum(BigDecimal massKg, BigDecimal momentKgMm, BigDecimal unknownKg) {

        Sum with(BigDecimal kg, @Nullable Station at) {
            Integer heightMm = at == null ? null : at.heightMm();
            return heightMm == null
                    ? new Sum(massKg, momentKgMm, unknownKg.add(kg.abs()))
                    : new Sum(massKg.add(kg), momentKgMm.add(kg.multiply(BigDecimal.valueOf(heightMm))), unknownKg);
        }

        BigDecimal middleMm() {
            return momentKgMm.divide(massKg, MathContext.DECIMAL128);
        }
    }
}
