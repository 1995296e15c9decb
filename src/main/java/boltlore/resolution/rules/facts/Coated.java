package boltlore.resolution.rules.facts;

import boltlore.measure.PartNumber;
import boltlore.resolution.Requirer;

/** The part is coated in the finish of that role; a fixed finish is its own role. */
public record Coated(Requirer part, PartNumber number, String role) {}
