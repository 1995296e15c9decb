package boltlore.trades.cutting.packing;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Packs a task as well as is known: textbook rules first; where they do not meet the bound, a linear program that gives a
 * better bound and better bars; for few pieces, a search of all ways. The same task gives the same packing.
 */
public final class Packer {

    /** Above this the linear program takes too long; the bound by length is good then anyway. */
    private static final int MOST_KINDS_TO_SOLVE = 400;

    private Packer() {}

    public static Packing pack(Task task) {
        if (task.kinds().isEmpty()) {
            return new Packing(List.of(), 0, 0);
        }
        CuttingPlan best = byRule(task);
        Affordable affordable = Affordable.upTo(best.cost(), task.stocks());
        long bound = affordable.atLeast(0, task.roomToBuy());
        if (best.cost() > bound) {
            bound = affordable.atLeast(quickBound(task), task.roomToBuy());
        }
        if (best.cost() > bound && task.kinds().size() <= MOST_KINDS_TO_SOLVE) {
            Set<CuttingPattern> patterns = new LinkedHashSet<>(best.bars());
            ColumnGeneration solved = ColumnGeneration.solved(
                    task, task.counts(), new int[task.stocks().size()], patterns);
            bound = Math.max(bound, affordable.atLeast(Bounds.byPrices(task, solved.prices()), task.roomToBuy()));
            best = DivingHeuristic.from(task, solved, patterns, best, bound);
        }
        return best.cost() > bound ? searched(task, best, bound, affordable) : packing(best, bound);
    }

    private static Packing searched(Task task, CuttingPlan known, long bound, Affordable affordable) {
        BranchAndBound search = new BranchAndBound(task, known, bound, affordable);
        CuttingPlan best = search.best();
        return packing(best, search.searchedAll() ? best.cost() : bound);
    }

    private static Packing packing(CuttingPlan best, long bound) {
        return new Packing(best.bars(), best.cost(), bound);
    }

    static long quickBound(Task task) {
        long byLength = Bounds.byLength(task);
        if (task.stocks().size() > 1) {
            return byLength;
        }
        Stock only = task.stocks().get(0);
        return Math.max(byLength, Bounds.bars(task.kinds(), only.room()) * only.cost());
    }

    private static CuttingPlan byRule(Task task) {
        CuttingPlan best = LocalImprovement.improve(
                task, BarByBar.pack(task, task.counts(), new int[task.stocks().size()]));
        for (int stock = 0; stock < task.stocks().size(); stock++) {
            if (holdsEveryKind(task, stock)) {
                best = best.orBetter(
                        LocalImprovement.improve(task, DecreasingFit.pack(task, stock, DecreasingFit.Rule.FIRST)));
                best = best.orBetter(
                        LocalImprovement.improve(task, DecreasingFit.pack(task, stock, DecreasingFit.Rule.BEST)));
            }
        }
        return best;
    }

    private static boolean holdsEveryKind(Task task, int stock) {
        Stock bars = task.stocks().get(stock);
        return bars.isBought() && bars.room() >= task.kinds().get(0).length() + task.mostExposed();
    }
}
