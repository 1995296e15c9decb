package boltlore.resolution.rules.facts;

/** Whether the order has decided what becomes of unused brackets. */
public record UnusedBrackets(boolean decided) {}
