package boltlore.catalogue;

/** A fit stage; the workshop lists them in fitting order. */
public record Stage(String name, String says) {}
