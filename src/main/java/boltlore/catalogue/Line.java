package boltlore.catalogue;

import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;

/**
 * One part at one position, under one condition.
 *
 * @param quantity in the part's own unit
 * @param when all of it, the effectivity included
 * @param carries positions that this bracket line holds up; empty for anything but a bracket
 * @param note for the workshop, may be empty
 * @param effectivity which orders it holds for by date and chassis number
 * @param changes its history, oldest first
 */
public record Line(
        LineName name,
        PartNumber part,
        BigDecimal quantity,
        Condition when,
        List<PositionName> carries,
        List<Need> needs,
        List<Expectation> expects,
        String note,
        Effectivity effectivity,
        List<Change> changes) {

    /** A line that holds for every order, without a history. */
    public Line(
            LineName name,
            PartNumber part,
            BigDecimal quantity,
            Condition when,
            List<PositionName> carries,
            List<Need> needs,
            List<Expectation> expects,
            String note) {
        this(name, part, quantity, when, carries, needs, expects, note, Effectivity.ALWAYS, List.of());
    }

    public boolean isBracket() {
        return !carries.isEmpty();
    }
}
