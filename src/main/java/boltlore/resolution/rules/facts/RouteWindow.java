package boltlore.resolution.rules.facts;

import boltlore.measure.PositionName;

/** A cable at that position is at least and at most so long, in mm, when the condition holds. */
public record RouteWindow(PositionName position, int leastMm, int mostMm, ConditionKey condition) {

    public String window() {
        return leastMm + " to " + mostMm + " mm";
    }
}
