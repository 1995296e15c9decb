package boltlore.resolution.rules.facts;

import boltlore.resolution.Asker;

/** Concluded: stores come upon the part outside anything that is picked whole. */
public record ToPick(Asker part) {}
