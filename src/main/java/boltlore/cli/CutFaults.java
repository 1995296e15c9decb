package boltlore.cli;

import boltlore.catalogue.BarStock;
import boltlore.faults.Fault;
import boltlore.trades.cutting.CutPlan;
import boltlore.trades.cutting.CutPlan.NotCut;
import java.util.List;

/** Pieces that cannot be cut, as faults of the catalogue. */
final class CutFaults {

    private CutFaults() {}

    static List<Fault> of(CutPlan plan) {
        return plan.notCut().stream().map(CutFaults::fault).distinct().toList();
    }

    private static Fault fault(NotCut not) {
        BarStock bars = not.bars();
        String part = "part " + not.set().part().number();
        if (bars == null) {
            return Fault.of(
                    "materials.json",
                    part + " cut from '" + not.material() + "', of which no bars are known",
                    "the bars that it is bought in",
                    "Add 'stock' to that material.");
        }
        String longest =
                "pieces that the longest bar of " + bars.longest().lengthMm() + " mm gives after its head trim of "
                        + bars.saw().headTrimMm().toPlainString() + " mm, slanted cuts included";
        return Fault.of(
                "materials.json", part + ", too long for '" + not.material() + "'", longest, "Buy longer bars.");
    }
}
