package boltlore.answers;

import boltlore.bill.Bill;
import boltlore.bill.Costs;
import boltlore.bill.Masses;
import boltlore.measure.PartNumber;
import boltlore.resolution.Finding;
import java.math.BigDecimal;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What changes from one order's kit to another's.
 *
 * @param costDifference of the second over the first, before coating and mark-up, unrounded
 * @param massKgDifference of the second over the first
 */
public record Comparison(
        SortedMap<PartNumber, Change> changes,
        SortedSet<Finding> findingsGone,
        SortedSet<Finding> findingsNew,
        BigDecimal costDifference,
        BigDecimal massKgDifference) {

    /** Quantities in the first and the second kit; zero where the part is not in. */
    public record Change(BigDecimal before, BigDecimal after) {

        public boolean in() {
            return before.signum() == 0;
        }

        public boolean out() {
            return after.signum() == 0;
        }
    }

    public static Comparison of(Bill first, Bill second) {
        return new Comparison(
                changes(
                        first.resolved().kit().quantities(),
                        second.resolved().kit().quantities()),
                missing(first.resolved().findings(), second.resolved().findings()),
                missing(second.resolved().findings(), first.resolved().findings()),
                Costs.kit(second).subtract(Costs.kit(first)),
                Masses.kitKg(second).subtract(Masses.kitKg(first)));
    }

    private static SortedMap<PartNumber, Change> changes(
            SortedMap<PartNumber, BigDecimal> before, SortedMap<PartNumber, BigDecimal> after) {
        SortedSet<PartNumber> parts = new TreeSet<>(before.keySet());
        parts.addAll(after.keySet());
        SortedMap<PartNumber, Change> changes = new TreeMap<>();
        for (PartNumber part : parts) {
            BigDecimal was = before.getOrDefault(part, BigDecimal.ZERO);
            BigDecimal is = after.getOrDefault(part, BigDecimal.ZERO);
            if (was.compareTo(is) != 0) {
                changes.put(part, new Change(was, is));
            }
        }
        return changes;
    }

    private static SortedSet<Finding> missing(SortedSet<Finding> from, SortedSet<Finding> in) {
        SortedSet<Finding> rest = new TreeSet<>(from);
        rest.removeAll(in);
        return rest;
    }
}
