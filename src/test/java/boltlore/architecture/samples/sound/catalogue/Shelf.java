package boltlore.architecture.samples.sound.catalogue;

public record Shelf(int length) {}
