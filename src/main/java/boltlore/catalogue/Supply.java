package boltlore.catalogue;

/** A customer's own mains supply. */
public record Supply(String name, String says, Facts facts) {}
