package boltlore.resolution.rules.facts;

/** It is known which sockets, inlets or languages that market uses. */
public record MarketLists(String market, MarketUses.Kind kind) {}
