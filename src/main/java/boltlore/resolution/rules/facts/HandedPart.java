package boltlore.resolution.rules.facts;

import boltlore.catalogue.Hand;
import boltlore.resolution.Asker;

/** The part is that hand of that pair. */
public record HandedPart(Asker part, String pair, Hand hand) {}
