package boltlore.resolution.rules.facts;

import boltlore.catalogue.Hand;

/** Concluded: a part of that hand of the pair is in the kit. */
public record HandInKit(String pair, Hand hand) {}
