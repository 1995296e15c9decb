package boltlore.trades.picking;

import java.math.BigDecimal;

/** So many of a part at one fit stage, in the part's unit. */
public record StageQuantity(String stage, BigDecimal quantity) {}
