package boltlore.resolution.rules.facts;

import boltlore.measure.LineName;
import boltlore.measure.PositionName;

/** The bracket line carries whatever is called for at that position. */
public record Carries(LineName bracket, PositionName position) {}
