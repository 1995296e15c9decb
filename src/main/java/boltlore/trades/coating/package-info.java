/** The coating of kits: film, powder, cost, masks, batches, oven loads, send-outs. Knows bills and no sheet. */
@NullMarked
package boltlore.trades.coating;

import org.jspecify.annotations.NullMarked;
