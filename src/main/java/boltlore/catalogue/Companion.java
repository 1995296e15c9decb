package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.util.List;

/** Needs and expectations of a part that hold in one family only. */
public record Companion(PartNumber part, List<Need> needs, List<Expectation> expects) {}
