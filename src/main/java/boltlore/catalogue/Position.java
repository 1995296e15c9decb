package boltlore.catalogue;

import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A place in the kit with its alternative lines.
 *
 * @param stage fit stage at which it is fitted
 * @param bag bag or crate it is packed in, or empty
 * @param under parent position
 * @param due when it must be filled; null where none is written, which means always, except for a free position
 * @param heldBy lists of bracket lines; one of each list must be in. Empty: no bracket is asked for
 */
public record Position(
        PositionName name,
        Wording says,
        String subSystem,
        String stage,
        String bag,
        @Nullable PositionName under,
        Fill fill,
        @Nullable Condition due,
        List<List<LineName>> heldBy,
        List<Route> routes,
        List<Line> lines,
        List<Document> documents) {

    /** A position without documents. */
    public Position(
            PositionName name,
            Wording says,
            String subSystem,
            String stage,
            String bag,
            @Nullable PositionName under,
            Fill fill,
            @Nullable Condition due,
            List<List<LineName>> heldBy,
            List<Route> routes,
            List<Line> lines) {
        this(name, says, subSystem, stage, bag, under, fill, due, heldBy, routes, lines, List.of());
    }

    public Condition dueOrAlways() {
        return due == null ? Condition.ALWAYS : due;
    }
}
