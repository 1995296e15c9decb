package boltlore.resolution.rules.facts;

import boltlore.measure.PartNumber;

/** Concluded: the part takes that finish. */
public record TakesFinish(PartNumber part, String finish) {}
