package boltlore.trades.coating;

/** Why a piece is coated, or is not yet. */
public enum CoatingStatus {
    /** The kit uses it. */
    NEEDED,
    /** The customer asks for it outside the universal kit. */
    EXTRA,
    /** It carries nothing in its kit and ships all the same, on purpose. */
    KEPT,
    /** It carries nothing in its kit and nobody has decided yet: not coated until someone does. */
    HELD_BACK
}
