package boltlore.resolution.rules.facts;

import boltlore.resolution.Asker;

/** A thread, face or earth point of a coated part that is masked. */
public record BareFeature(Asker part, String feature) {}
