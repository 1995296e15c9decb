package boltlore.trades.testing;

import boltlore.catalogue.Label;
import boltlore.catalogue.Part;
import org.jspecify.annotations.Nullable;

/**
 * A label of this kit at its place.
 *
 * @param at null where it belongs to the vehicle as a whole
 * @param part of the kit that it is taken from
 */
public record PlacedLabel(Label label, @Nullable TestedAt at, Part part) {}
