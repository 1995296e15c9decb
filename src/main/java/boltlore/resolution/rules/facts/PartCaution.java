package boltlore.resolution.rules.facts;

import boltlore.resolution.Requirer;

/** The part calls for that caution. */
public record PartCaution(Requirer part, String caution) {}
