package boltlore.catalogue;

/** How an assembly holds together; a welded one is coated whole. */
public enum Joined {
    WELDED,
    BOLTED
}
