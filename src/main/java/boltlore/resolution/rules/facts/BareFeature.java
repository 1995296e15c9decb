package boltlore.resolution.rules.facts;

import boltlore.resolution.Requirer;

/** A thread, face or earth point of a coated part that is masked. */
public record BareFeature(Requirer part, String feature) {}
