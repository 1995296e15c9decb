package boltlore.trades.picking;

import java.util.List;

/** What is packed for one fit stage, for the second count; rows by bag, what goes in no bag last. */
public record BagPage(String stage, List<BagRow> rows) {}
