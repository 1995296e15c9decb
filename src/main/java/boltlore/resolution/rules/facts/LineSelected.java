package boltlore.resolution.rules.facts;

import boltlore.measure.LineName;
import boltlore.measure.PositionName;

/** Concluded: the line's condition holds. */
public record LineSelected(LineName line, PositionName position, boolean bracket) {}
