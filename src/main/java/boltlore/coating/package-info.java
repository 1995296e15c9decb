/** The coating of kits: film, powder, cost, masks, batches, oven loads, send-outs. Knows bills and no sheet. */
@NullMarked
package boltlore.coating;

import org.jspecify.annotations.NullMarked;
