package boltlore.resolution.rules.facts;

/** Concluded: a mate is there for every port that names it. */
public record Mated(String part, String port) {}
