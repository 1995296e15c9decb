package boltlore.resolution.rules.facts;

/** The language of labels and manual. */
public record LabelLanguage(String language) {}
