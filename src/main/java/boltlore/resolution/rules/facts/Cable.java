package boltlore.resolution.rules.facts;

import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import boltlore.resolution.Requirer;

/** A line whose part is a cable of that length in mm. */
public record Cable(LineName line, Requirer asker, PositionName position, int lengthMm) {}
