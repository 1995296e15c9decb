package boltlore.resolution.rules.facts;

/** One of the cases in which a condition holds. */
public record ConditionCase(ConditionKey condition, int number) {}
