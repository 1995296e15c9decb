package boltlore.resolution.rules.facts;

import boltlore.measure.PositionName;

/** A cable at that position is at least and at most so long, in mm, when the condition holds. */
public record RouteWindow(PositionName position, int leastMm, int mostMm, String condition) {

    public String window() {
        return leastMm + " to " + mostMm + " mm";
    }
}
