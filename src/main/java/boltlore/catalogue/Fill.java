package boltlore.catalogue;

/** How many lines a position takes. */
public enum Fill {
    /** Exactly one while it is due. */
    ONE,
    /** At least one while it is due. */
    SOME,
    /** Any number, also none. */
    FREE
}
