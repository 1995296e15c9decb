package boltlore.resolution.rules.facts;

import boltlore.measure.PositionName;

/** The position takes one line. */
public record OneLineOnly(PositionName position) {}
