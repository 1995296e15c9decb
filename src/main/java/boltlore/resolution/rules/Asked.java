package boltlore.resolution.rules;

/** A part that the order asks for by its number. */
public record Asked(String part) {}
