package boltlore.catalogue;

/** What a crate is made of, as far as the plant-health rules for wood packaging ask. */
public enum Wood {
    /** Sawn wood thicker than 6 mm: must be treated and marked where it crosses borders. */
    SOLID,
    /** Glued boards, or wood of 6 mm and less: exempt. */
    PLYWOOD,
    /** No wood at all. */
    NONE
}
