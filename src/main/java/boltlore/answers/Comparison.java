package boltlore.answers;

import boltlore.bill.Bill;
import boltlore.bill.Costs;
import boltlore.bill.Masses;
import boltlore.measure.PartNumber;
import boltlore.resolution.Finding;
import boltlore.resolution.Kit;
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

    /**
     * Quantities in the first and the second kit; zero where the part is not in.
     *
     * @param finishBefore empty where the part takes none or is not in
     */
    public record Change(BigDecimal before, BigDecimal after, String finishBefore, String finishAfter) {

        /** Whether the part is in both kits, and stores hand it out in another finish. */
        public boolean refinished() {
            return !in() && !out() && !finishBefore.equals(finishAfter);
        }


        public boolean in() {
            return before.signum() == 0;
        }

        public boolean out() {
            return after.signum() == 0;
        }
    }

    public static Comparison of(Bill first, Bill second) {
        return new Comparison(
                changes(first.resolved().kit(), second.resolved().kit()),
                missing(first.resolved().findings(), second.resolved().findings()),
                missing(second.resolved().findings(), first.resolved().findings()),
                Costs.kit(second).subtract(Costs.kit(first)),
                Masses.kitKg(second).subtract(Masses.kitKg(first)));
    }

    private static SortedMap<PartNumber, Change> changes(Kit before, Kit after) {
        SortedSet<PartNumber> parts = new TreeSet<>(before.quantities().keySet());
        parts.addAll(after.quantities().keySet());
        SortedMap<PartNumber, Change> changes = new TreeMap<>();
        for (PartNumber part : parts) {
            Change change = new Change(
                    before.quantities().getOrDefault(part, BigDecimal.ZERO),
                    after.quantities().getOrDefault(part, BigDecimal.ZERO),
                    before.finishes().getOrDefault(part, ""),
                    after.finishes().getOrDefault(part, ""));
            if (change.before().compareTo(change.after()) != 0 || change.refinished()) {
                changes.put(part, change);
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
