package boltlore.trades.costing.path;

import boltlore.catalogue.Part;
import java.math.BigDecimal;

/**
 * A part that an extra asks for, itself or inside what is made.
 *
 * @param quantity of it for the whole extra, in the part's unit
 */
public record TimedExtra(Part part, BigDecimal quantity, Timing timing) {}
