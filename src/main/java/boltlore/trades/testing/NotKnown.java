package boltlore.trades.testing;

/** What a limit would have to be worked out from. */
public enum NotKnown {
    PACK,
    PRECHARGE,
    TRIP,
    SUPPLY,
    SOCKET
}
