package boltlore.catalogue;

/** A mask that the coating shop holds: the kind of feature and the size it covers. */
public record Mask(String name, String says, Feature.Kind kind, String size) {}
