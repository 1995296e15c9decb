package boltlore.resolution.rules.facts;

import boltlore.measure.PositionName;

/** Concluded: a bracket of that list is in the kit. */
public record Held(PositionName position, int list) {}
