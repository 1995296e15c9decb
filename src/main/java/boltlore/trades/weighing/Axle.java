package boltlore.trades.weighing;

/** One of the two axles of a donor vehicle. */
public enum Axle {
    FRONT,
    REAR
}
