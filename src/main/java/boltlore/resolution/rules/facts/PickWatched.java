package boltlore.resolution.rules.facts;

import boltlore.measure.PartNumber;
import boltlore.resolution.Asker;

/** A part at whose picking the rules must look: it has no bin of its own, or it is taken apart for picking. */
public record PickWatched(Asker part, PartNumber number) {}
