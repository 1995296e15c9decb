package boltlore.resolution.rules.facts;

import boltlore.measure.PositionName;

/** That case asks for that position to be filled. */
public record CaseAsksFilled(ConditionKey condition, int number, PositionName position) {}
