package boltlore.proof;

import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.resolution.Finding;
import boltlore.resolution.Reason;
import boltlore.resolution.Resolution;
import java.math.BigDecimal;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;

/** All that two engines must say alike of one order. */
record Said(
        SortedSet<LineName> lines,
        SortedMap<PartNumber, BigDecimal> quantities,
        SortedSet<Reason> reasons,
        SortedSet<Finding> findings) {

    /** What the rules conclude; 12 and 12.0 of a part are the same. */
    static Said byRules(Resolution.Resolved resolved) {
        SortedMap<PartNumber, BigDecimal> quantities = new TreeMap<>();
        resolved.kit().quantities().forEach((part, quantity) -> quantities.put(part, quantity.stripTrailingZeros()));
        return new Said(resolved.kit().lines(), quantities, resolved.kit().reasons(), resolved.findings());
    }
}
