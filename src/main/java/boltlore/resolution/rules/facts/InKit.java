package boltlore.resolution.rules.facts;

import boltlore.resolution.Asker;

/** Concluded: the line or the part is in the kit. */
public record InKit(Asker asker) {}
