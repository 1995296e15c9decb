package boltlore.resolution.rules.facts;

import boltlore.measure.LineName;

/** Concluded: the bracket is in the kit and carries nothing in it. */
public record Unused(LineName bracket) {}
