package boltlore.catalogue;

/** Whether the workshop makes a part or buys it. */
public enum Source {
    MAKE,
    BUY
}
