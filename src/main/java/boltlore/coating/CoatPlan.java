package boltlore.coating;

import boltlore.order.Order;
import java.util.List;
import java.util.SortedSet;

/**
 * All that is to be coated for some orders.
 *
 * @param orders earliest need first
 * @param batches for the own ovens, earliest need first
 * @param sendOuts to outside coaters, earliest need first
 * @param heldBack pieces that nobody has decided about, which are in no batch
 * @param runs of the booths, in the order that the powders are sprayed
 * @param cautions codes of the cautions that the kits ask for on this sheet
 */
public record CoatPlan(
        List<Order> orders,
        List<OvenBatch> batches,
        List<SendOut> sendOuts,
        List<BatchRow> heldBack,
        List<PowderRun> runs,
        SortedSet<String> cautions) {

    /** Whether there is nothing to coat and nothing to decide. */
    public boolean isEmpty() {
        return batches.isEmpty() && sendOuts.isEmpty() && heldBack.isEmpty();
    }
}
