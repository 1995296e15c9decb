package boltlore.catalogue;

import boltlore.measure.Wording;
import org.jspecify.annotations.Nullable;

/**
 * What a test is made with.
 *
 * @param scale null where it shows no number and a person judges a state by it
 */
public record Instrument(
        String name, Wording says, @Nullable Scale scale) {}
