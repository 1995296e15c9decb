package boltlore.resolution.rules.facts;

import boltlore.resolution.Requirer;

/** Concluded: the line or the part is in the kit. */
public record InKit(Requirer asker) {}
