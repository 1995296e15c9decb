package boltlore.architecture.samples.sideways.pricing;

public record Price(long cents) {}
