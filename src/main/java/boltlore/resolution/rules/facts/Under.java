package boltlore.resolution.rules.facts;

import boltlore.measure.PositionName;

/** The position hangs on its parent position. */
public record Under(PositionName position, PositionName parent) {}
