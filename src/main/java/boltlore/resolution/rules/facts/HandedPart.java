package boltlore.resolution.rules.facts;

import boltlore.catalogue.Hand;
import boltlore.resolution.Requirer;

/** The part is that hand of that pair. */
public record HandedPart(Requirer part, String pair, Hand hand) {}
