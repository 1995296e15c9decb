package boltlore.resolution.rules.facts;

/** Concluded: something that the case asks for is not so. */
public record CaseFails(ConditionKey condition, int number) {}
