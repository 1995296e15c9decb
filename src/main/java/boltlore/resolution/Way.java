package boltlore.resolution;

/** How an asker brings a part. */
public enum Way {
    /** It is the line's own part. */
    LINE,
    /** The assembly contains it. */
    CONTAINS,
    /** The asker needs it as a companion. */
    NEEDS
}
