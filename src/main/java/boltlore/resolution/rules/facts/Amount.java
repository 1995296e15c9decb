package boltlore.resolution.rules.facts;

import boltlore.measure.PositionName;
import java.math.BigDecimal;

/** How many of a part, or how many lines at a position, are in the kit; a part's target is its number. */
public record Amount(String target, BigDecimal quantity) {

    /** What lines at that position are counted under: some names are a part's number and a position's name. */
    public static String linesAt(PositionName position) {
        return "lines at " + position.text();
    }
}
