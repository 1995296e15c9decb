package boltlore.resolution.rules.facts;

import boltlore.measure.PositionName;

/** That case asks for that position to be empty. */
public record CaseAsksEmpty(ConditionKey condition, int number, PositionName position) {}
