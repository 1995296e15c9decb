package boltlore.resolution.rules.facts;

import boltlore.catalogue.Hand;

/** One hand of the pair ships: this one; it must be there when the condition holds. */
public record PairFollows(String pair, Hand wanted, Hand other, ConditionKey condition) {}
