package boltlore.trades.picking;

/**
 * A part that is coated for this kit and so comes from coating, not from its bin.
 *
 * @param coatedAt the outside coater, or empty for an oven of our own
 */
public record CoatedRow(PickRow row, String coatedAt) {}
