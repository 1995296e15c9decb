package boltlore.cli;

import boltlore.cutting.CutPlan;
import boltlore.cutting.CutPlanner;
import boltlore.cutting.Remnant;
import java.util.List;

/** Orders to cut together, and the remnants at hand. */
record CutKits(KitsTogether orders, List<Remnant> remnants) {

    CutPlan plan() {
        return CutPlanner.of(orders.bills(), orders.catalogue(), remnants);
    }
}
