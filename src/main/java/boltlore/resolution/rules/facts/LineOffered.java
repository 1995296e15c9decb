package boltlore.resolution.rules.facts;

import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import boltlore.resolution.Requirer;

/** A line that the choices do not rule out; it is called for when its condition holds. */
public record LineOffered(LineName line, PositionName position, boolean bracket, ConditionKey condition) {

    public Requirer asker() {
        return new Requirer.OfLine(line);
    }
}
