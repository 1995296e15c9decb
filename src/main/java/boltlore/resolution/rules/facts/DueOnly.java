package boltlore.resolution.rules.facts;

import boltlore.measure.PositionName;

/** The position should be filled only when the condition holds. */
public record DueOnly(PositionName position, ConditionKey condition) {}
