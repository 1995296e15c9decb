package boltlore.resolution.rules.facts;

import boltlore.measure.LineName;

/** Concluded: the bracket carries something in this kit. */
public record Useful(LineName bracket) {}
