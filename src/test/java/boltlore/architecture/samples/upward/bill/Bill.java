package boltlore.architecture.samples.upward.bill;

public record Bill(int rows) {}
