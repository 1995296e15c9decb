/**
 * What a kit costs in full, by element: material and what of it is lost, labour and set-up, coating, outside work, freight,
 * duty, clearance, overhead. Stands beside the direct cost of the costed bill and does not change it.
 */
@NullMarked
package boltlore.trades.costing.cost;

import org.jspecify.annotations.NullMarked;
