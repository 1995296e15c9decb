package boltlore.resolution.rules.facts;

import boltlore.resolution.Requirer;

/** A part that stores hand out as it is: a leaf, a stocked, a welded or a coated assembly. */
public record PickedWhole(Requirer part, boolean hasBin) {}
