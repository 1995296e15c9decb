package boltlore.resolution.rules.facts;

/** The condition of that key holds. */
public record Holds(ConditionKey condition) {}
