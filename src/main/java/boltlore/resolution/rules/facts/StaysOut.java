package boltlore.resolution.rules.facts;

import boltlore.measure.LineName;

/** The order leaves that line out. */
public record StaysOut(LineName line) {}
