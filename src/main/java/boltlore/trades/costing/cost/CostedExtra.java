package boltlore.trades.costing.cost;

import boltlore.order.Extra;

/** An extra of the order with what it costs in full; nothing where the customer supplies it. */
public record CostedExtra(Extra extra, Elements elements) {}
