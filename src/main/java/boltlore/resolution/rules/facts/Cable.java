package boltlore.resolution.rules.facts;

import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import boltlore.resolution.Asker;

/** A line whose part is a cable of that length in mm. */
public record Cable(LineName line, Asker asker, PositionName position, int lengthMm) {}
