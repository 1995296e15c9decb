package boltlore.resolution.rules.facts;

import boltlore.measure.PositionName;

/** One bracket of that list must hold the position; brackets names them for people. */
public record HeldByOneOf(PositionName position, int list, String brackets) {}
