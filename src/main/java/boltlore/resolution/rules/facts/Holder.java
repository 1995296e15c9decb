package boltlore.resolution.rules.facts;

import boltlore.measure.PositionName;
import boltlore.resolution.Requirer;

/** The bracket line is in that list of the position. */
public record Holder(PositionName position, int list, Requirer bracket) {}
