package boltlore.catalogue;

import boltlore.measure.Wording;

/**
 * A bag of the kit that is a crate of its own and does not go with the rest of its fit stage.
 *
 * @param together whether one crate serves all fit stages, and not one each
 */
public record OwnCrate(String bag, Wording says, boolean together) {}
