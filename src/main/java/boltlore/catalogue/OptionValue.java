package boltlore.catalogue;

import boltlore.measure.Wording;

/** One value of an option; 'not fitted' is a value too. */
public record OptionValue(String value, Wording says, Facts facts) {}
