package boltlore.catalogue;

/** Harmonised System code and country of origin (ISO 3166 alpha-2). */
public record Customs(String hs, String origin) {}
