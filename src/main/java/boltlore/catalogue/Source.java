package boltlore.catalogue;

/** Where a part comes from. */
public enum Source {
    /** The workshop makes it. */
    MAKE,
    /** The workshop buys it. */
    BUY,
    /** The base vehicle's own, which goes back in: neither bought nor picked nor shipped, and weighed with the vehicle. */
    DONOR
}
