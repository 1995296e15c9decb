package boltlore.resolution.rules;

import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.resolution.Finding;
import boltlore.resolution.Kit;
import boltlore.resolution.Reason;
import java.math.BigDecimal;
import java.util.SortedMap;
import java.util.SortedSet;

/** What the rules conclude of one order, sorted. */
public record KitConclusions(
        SortedSet<LineName> lines,
        SortedSet<LineName> leftOut,
        SortedSet<LineName> unused,
        SortedSet<PositionName> filled,
        SortedSet<Reason> reasons,
        SortedMap<PartNumber, String> finishes,
        SortedMap<String, SortedSet<String>> cautions,
        SortedSet<Finding> findings) {

    /** The kit that these conclusions and quantities make. */
    public Kit kit(SortedMap<PartNumber, BigDecimal> quantities) {
        return new Kit(lines, leftOut, unused, filled, reasons, quantities, finishes, cautions);
    }
}
