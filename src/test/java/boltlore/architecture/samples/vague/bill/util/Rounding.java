package boltlore.architecture.samples.vague.bill.util;

public record Rounding(int digits) {}
