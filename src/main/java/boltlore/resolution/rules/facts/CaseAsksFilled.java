package boltlore.resolution.rules.facts;

import boltlore.measure.PositionName;

/** That case asks for that position to be filled. */
public record CaseAsksFilled(String condition, int number, PositionName position) {}
