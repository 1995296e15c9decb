package boltlore.cli;

import boltlore.trades.cutting.CutPlan;
import boltlore.trades.cutting.CutPlanner;
import boltlore.trades.cutting.Remnant;
import java.util.List;

/** Orders to cut together, and the remnants at hand. */
record CutKits(KitsTogether orders, List<Remnant> remnants) {

    CutPlan plan() {
        return CutPlanner.of(orders.bills(), orders.catalogue(), remnants);
    }
}
