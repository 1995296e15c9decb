package boltlore.trades.cutting.packing;

import java.util.Comparator;
import java.util.List;

/** Bars that hold all that is wanted, with what tells a better plan from a worse: cost, then scrap, then bars. */
record CuttingPlan(List<CuttingPattern> bars, long cost, long scrap) {

    private static final Comparator<CuttingPlan> BETTER = Comparator.comparingLong(CuttingPlan::cost)
            .thenComparingLong(CuttingPlan::scrap)
            .thenComparingInt(plan -> plan.bars().size());

    static CuttingPlan of(Task task, List<CuttingPattern> bars) {
        return new CuttingPlan(
                List.copyOf(bars),
                bars.stream()
                        .mapToLong(bar -> task.stocks().get(bar.stock()).cost())
                        .sum(),
                bars.stream().mapToLong(task::scrap).sum());
    }

    CuttingPlan orBetter(CuttingPlan other) {
        return BETTER.compare(other, this) < 0 ? other : this;
    }
}
