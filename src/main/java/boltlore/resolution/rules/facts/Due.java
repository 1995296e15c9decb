package boltlore.resolution.rules.facts;

import boltlore.measure.PositionName;

/** The position must be filled when the condition holds. */
public record Due(PositionName position, ConditionKey condition) {}
