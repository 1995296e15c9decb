package boltlore.trades.testing;

import boltlore.catalogue.ManualSection;
import boltlore.catalogue.Part;

/** A manual's section that applies to this kit, and the manual in it. */
public record KitSection(ManualSection section, Part manual) {}
