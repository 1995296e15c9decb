package boltlore.resolution.rules.facts;

/** Concluded: this kit's sheet carries the caution. */
public record CautionOn(String sheet, String caution) {}
