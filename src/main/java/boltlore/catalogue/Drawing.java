package boltlore.catalogue;

/** The drawing that a part is made to, with its issue. */
public record Drawing(String number, String issue) {}
