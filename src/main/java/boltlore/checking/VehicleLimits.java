package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Chassis;
import boltlore.catalogue.Donor;
import boltlore.catalogue.Family;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a vehicle may weigh on each axle and in all. The axles together may carry the gross mass, and neither alone carries more than
 * that: Regulation (EU) No 1230/2012, annex I, from memory. Neither may weigh more empty than it may carry.
 */
final class VehicleLimits {

    /** Axle limits beyond this share of the gross mass are another vehicle's; common practice, no source. */
    private static final BigDecimal SUM_MOST = new BigDecimal("1.35");

    /** Bodies of one family are one vehicle in other years; workshop's own value, check before use. */
    private static final BigDecimal ERAS_DIFFER = new BigDecimal("0.08");

    private record Figure(String key, Function<Chassis, @Nullable Number> of) {}

    private static final List<Figure> FIGURES = List.of(
            new Figure("wheelbaseMm", Chassis::wheelbaseMm),
            new Figure("trackMm.front", Chassis::frontTrackMm),
            new Figure("trackMm.rear", Chassis::rearTrackMm),
            new Figure("centreHeightMm", Chassis::centreHeightMm),
            new Figure("axleKg.front", Chassis::frontKg),
            new Figure("axleKg.rear", Chassis::rearKg),
            new Figure("axleLimitKg.front", Chassis::frontLimitKg),
            new Figure("axleLimitKg.rear", Chassis::rearLimitKg),
            new Figure("grossKg", Chassis::grossKg));

    private VehicleLimits() {}

    static Stream<Remark> remarks(Catalogue catalogue) {
        return catalogue.families().values().stream().flatMap(VehicleLimits::of);
    }

    private static Stream<Remark> of(Family family) {
        Donor donor = family.donor();
        if (donor == null) {
            return Stream.empty();
        }
        Map<String, Chassis> all = new TreeMap<>(donor.eras());
        all.put("", donor.usual());
        return Stream.concat(
                all.entrySet().stream().flatMap(each -> of(family, each.getKey(), each.getValue())),
                donor.eras().entrySet().stream()
                        .flatMap(era -> FIGURES.stream()
                                .flatMap(figure ->
                                        unlike(family, era.getKey(), figure, donor.usual(), era.getValue()).stream())));
    }

    private static Optional<Remark> unlike(Family family, String era, Figure figure, Chassis usual, Chassis other) {
        Number first = figure.of().apply(usual);
        Number second = figure.of().apply(other);
        if (first == null || second == null) {
            return Optional.empty();
        }
        BigDecimal one = new BigDecimal(first.toString());
        BigDecimal two = new BigDecimal(second.toString());
        return one.subtract(two).abs().compareTo(one.min(two).multiply(ERAS_DIFFER)) <= 0
                ? Optional.empty()
                : Optional.of(new Remark(
                        "family " + family.name() + ", " + era,
                        Check.ERA_UNLIKE,
                        "'" + figure.key() + "' " + Digits.plain(two),
                        "about " + Digits.plain(one) + ", as the other bodies have it: within 8 %",
                        "Look at its digits, and at the plate or the drawing of that body"));
    }

    private static Stream<Remark> of(Family family, String era, Chassis chassis) {
        BigDecimal front = chassis.frontLimitKg();
        BigDecimal rear = chassis.rearLimitKg();
        BigDecimal gross = chassis.grossKg();
        BigDecimal sum = front.add(rear);
        boolean agrees = front.max(rear).compareTo(gross) <= 0
                && sum.compareTo(gross) >= 0
                && sum.compareTo(gross.multiply(SUM_MOST)) <= 0
                && chassis.frontKg().compareTo(front) <= 0
                && chassis.rearKg().compareTo(rear) <= 0;
        return agrees
                ? Stream.empty()
                : Stream.of(new Remark(
                        "family " + family.name() + (era.isEmpty() ? "" : ", " + era),
                        Check.AXLE_LIMITS,
                        "axles that may carry " + Digits.plain(front) + " and " + Digits.plain(rear) + " kg and weigh "
                                + Digits.plain(chassis.frontKg()) + " and " + Digits.plain(chassis.rearKg())
                                + " kg, and a gross mass of " + Digits.plain(gross) + " kg",
                        "neither axle above the gross mass, both together at least that and at most "
                                + Digits.plain(SUM_MOST)
                                + " times that, and no axle that weighs more than it may carry",
                        "Read the vehicle's plate again; correct 'donor' in family.json"));
    }
}
