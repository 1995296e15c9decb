package boltlore.catalogue;

import boltlore.measure.Wording;

/** A fit stage; the workshop lists them in fitting order. */
public record Stage(String name, Wording says) {}
