package boltlore.catalogue;

/** The pair that a part belongs to and its hand in it. */
public record Handed(String pair, Hand hand) {}
