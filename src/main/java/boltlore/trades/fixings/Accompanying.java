package boltlore.trades.fixings;

import boltlore.catalogue.Part;
import java.math.BigDecimal;

/** So many of a nut or washer that come with a joint's bolts. */
public record Accompanying(Part part, BigDecimal quantity) {}
