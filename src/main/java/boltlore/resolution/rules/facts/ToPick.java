package boltlore.resolution.rules.facts;

import boltlore.resolution.Requirer;

/** Concluded: stores come upon the part outside anything that is picked whole. */
public record ToPick(Requirer part) {}
