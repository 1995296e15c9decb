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
 * @param carries positions that this bracket line holds up; empty for anything but a bracket
 * @param note for the workshop, may be empty
 */
public record Line(
        LineName name,
        PartNumber part,
        BigDecimal quantity,
        Condition when,
        List<PositionName> carries,
        List<Need> needs,
        List<Expectation> expects,
        String note) {

    public boolean isBracket() {
        return !carries.isEmpty();
    }
}
