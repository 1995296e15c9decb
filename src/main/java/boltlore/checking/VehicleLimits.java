package boltlore.checking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Chassis;
import boltlore.catalogue.Donor;
import boltlore.catalogue.Family;
import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What a vehicle may weigh on each axle and in all. The axles together may carry the gross mass, and neither alone carries more than
 * that: Regulation (EU) No 1230/2012, annex I, from memory. Neither may weigh more empty than it may carry.
 */
final class VehicleLimits {

    /** Axle limits beyond this share of the gross mass are another vehicle's; common practice, no source. */
    private static final BigDecimal SUM_MOST = new BigDecimal("1.35");

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
        return all.entrySet().stream().flatMap(each -> of(family, each.getKey(), each.getValue()));
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
