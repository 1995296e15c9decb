package boltlore.trades.shipping;

/** How crates travel. */
public enum By {
    ROAD,
    SEA,
    AIR
}
