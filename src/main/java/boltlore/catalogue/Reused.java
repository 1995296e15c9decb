package boltlore.catalogue;

import boltlore.measure.Wording;

/**
 * That a line's part is the base vehicle's own, which goes back in.
 *
 * @param inspect what is looked at before it does, and what ends its use
 */
public record Reused(Wording inspect) {}
