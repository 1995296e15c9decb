package boltlore.catalogue;

/** A spray booth and the powder that is in it, or empty. */
public record Booth(String name, String says, String holdsPowder) {}
