/**
 * The coating of kits: film, powder, cost, masks, batches, oven loads and how they hang, send-outs; the sheets and findings
 * of a plan, and what film readings and powder issued say of it.
 */
@NullMarked
package boltlore.trades.coating;

import org.jspecify.annotations.NullMarked;
