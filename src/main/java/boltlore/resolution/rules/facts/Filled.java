package boltlore.resolution.rules.facts;

import boltlore.measure.PositionName;

/** Concluded: some line of the position is called for. */
public record Filled(PositionName position) {}
