package boltlore.resolution.rules.facts;

/** The coating shop holds a mask for that kind and size of feature. */
public record MaskHeld(String feature) {}
