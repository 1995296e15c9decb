package boltlore.resolution.rules;

/** A part that is in the kit. */
public record InKit(String part) {}
