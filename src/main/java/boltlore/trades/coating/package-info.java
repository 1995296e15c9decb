/**
 * The coating of kits: film, powder, cost, masks, batches, oven loads and how they hang, send-outs; the sheets and findings
 * of a plan, and what film readings and powder issued say of it.
 *
 * <p>Coating goes in rounds of need, and a late order moves nothing that hangs. Oven loads are limited by area, mass, hooks
 * and volume; where pieces hang is a proposal.
 */
@NullMarked
package boltlore.trades.coating;

import org.jspecify.annotations.NullMarked;
