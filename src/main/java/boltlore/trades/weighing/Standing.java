package boltlore.trades.weighing;

/** What the axles carry in one way of standing on the scales. */
public record Standing(Stand stand, AxleLoads loads) {}
