package boltlore.catalogue;

/** What stores write down when they pick it. */
public enum Tracked {
    SERIAL,
    LOT
}
