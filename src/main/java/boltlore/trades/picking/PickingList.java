package boltlore.trades.picking;

import boltlore.bill.Bill;
import boltlore.resolution.FamilyPlan;
import java.util.List;

/**
 * All that stores need to hand out one kit.
 *
 * @param walk from bins, in walking order
 * @param fromCoating coated for this kit, so fetched from coating; by finish, then in walking order
 * @param heldBack not to be picked until the order decides on its unused brackets
 * @param extras outside the universal kit, in the order's own order
 * @param bags a page for each fit stage that gets anything, in fitting order
 * @param cautions codes of all cautions for the head of the list, sorted
 */
public record PickingList(
        List<PickRow> walk,
        List<CoatedRow> fromCoating,
        List<HeldBack> heldBack,
        List<ExtraRow> extras,
        List<BagPage> bags,
        List<String> cautions) {

    public static PickingList of(FamilyPlan plan, Bill bill) {
        return new PickingMaker(plan, bill).list();
    }
}
