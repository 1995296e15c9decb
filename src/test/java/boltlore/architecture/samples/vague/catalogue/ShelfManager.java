package boltlore.architecture.samples.vague.catalogue;

public record ShelfManager(int shelves) {}
