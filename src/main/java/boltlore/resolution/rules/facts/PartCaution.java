package boltlore.resolution.rules.facts;

import boltlore.resolution.Asker;

/** The part calls for that caution. */
public record PartCaution(Asker part, String caution) {}
