package boltlore.resolution;

import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The kit of one settled order.
 *
 * @param lines in the kit
 * @param leftOut lines called for but left out by the order
 * @param unused bracket lines in the kit that carry nothing in it
 * @param filled positions with a line that is called for
 * @param reasons why each part is in
 * @param quantities of each part, in its own unit, assemblies and their children alike
 * @param finishes that the coated parts take
 * @param cautions codes of the cautions by the sheet they stand on
 */
public record Kit(
        SortedSet<LineName> lines,
        SortedSet<LineName> leftOut,
        SortedSet<LineName> unused,
        SortedSet<PositionName> filled,
        SortedSet<Reason> reasons,
        SortedMap<PartNumber, BigDecimal> quantities,
        SortedMap<PartNumber, String> finishes,
        SortedMap<String, SortedSet<String>> cautions) {

    /** Codes of the cautions that stand on a sheet; a copy, to which others may be added. */
    public SortedSet<String> cautionsOn(String sheet) {
        return new TreeSet<>(cautions.getOrDefault(sheet, new TreeSet<>()));
    }

    public boolean contains(PartNumber part) {
        return quantities.containsKey(part);
    }
}
