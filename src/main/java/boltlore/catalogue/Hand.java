package boltlore.catalogue;

/** The hand of a part. */
public enum Hand {
    LEFT,
    RIGHT
}
