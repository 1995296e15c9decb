package boltlore.catalogue;

import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One part at one position, under one condition.
 *
 * @param quantity in the part's own unit
 * @param when all of it, the effectivity included
 * @param carries positions that this bracket line holds up; empty for anything but a bracket
 * @param note for the workshop, may be empty
 * @param effectivity which orders it holds for by date and chassis number
 * @param reused how the base vehicle's own part is looked at before it goes back in; null where the part is supplied
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
        @Nullable Reused reused,
        List<Change> changes) {

    /** A line that holds for every order, of a part that is supplied. */
    public Line(
            LineName name,
            PartNumber part,
            BigDecimal quantity,
            Condition when,
            List<PositionName> carries,
            List<Need> needs,
            List<Expectation> expects,
            String note) {
        this(name, part, quantity, when, carries, needs, expects, note, Effectivity.ALWAYS, null, List.of());
    }

    public boolean isBracket() {
        return !carries.isEmpty();
    }
}
