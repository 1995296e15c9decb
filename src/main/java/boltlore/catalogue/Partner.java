package boltlore.catalogue;

/** A partner workshop with the language of its papers. */
public record Partner(String name, String says, String language) {}
