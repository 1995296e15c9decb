package boltlore.resolution.rules.facts;

import boltlore.measure.PartNumber;
import boltlore.resolution.Requirer;

/** A part at whose picking the rules must look: it has no bin of its own, or it is taken apart for picking. */
public record PickWatched(Requirer part, PartNumber number) {}
