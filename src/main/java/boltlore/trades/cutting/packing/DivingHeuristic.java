package boltlore.trades.cutting.packing;

import boltlore.trades.cutting.packing.ColumnGeneration.Share;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * From shares of bars to whole bars: takes the whole bars of the linear program, or where it has none its largest share,
 * solves again for what is left, and at every step tries to finish bar by bar.
 */
final class DivingHeuristic {

    private static final int MOST_ROUNDS = 12;

    private final Task task;
    private final int[] wanted;
    private final int[] used;
    private final List<CuttingPattern> taken = new ArrayList<>();

    private DivingHeuristic(Task task) {
        this.task = task;
        this.wanted = task.counts();
        this.used = new int[task.stocks().size()];
    }

    /** The best way that was met, which is the given one where none is better; ends early at the bound. */
    static CuttingPlan from(Task task, ColumnGeneration solved, CuttingPlan known, long bound) {
        return new DivingHeuristic(task).down(solved, known, bound);
    }

    private CuttingPlan down(ColumnGeneration solved, CuttingPlan known, long bound) {
        CuttingPlan best = known;
        ColumnGeneration program = solved;
        for (int round = 0; round < MOST_ROUNDS && best.cost() > bound; round++) {
            take(program.shares());
            best = best.orBetter(finished());
            if (IntStream.of(wanted).allMatch(count -> count == 0)) {
                break;
            }
            program = ColumnGeneration.solved(task, wanted, used);
        }
        return best;
    }

    private void take(List<Share> shares) {
        int before = taken.size();
        for (Share share : shares) {
            for (int times = (int) (share.amount() + Simplex.TINY * 1000); times > 0; times--) {
                take(share.bar());
            }
        }
        if (taken.size() == before) {
            shares.stream().max(Comparator.comparingDouble(Share::amount)).ifPresent(share -> take(share.bar()));
        }
    }

    /** What it holds more than is still wanted is left off. */
    private void take(CuttingPattern bar) {
        int[] counts = bar.counts();
        Arrays.setAll(counts, kind -> Math.min(counts[kind], wanted[kind]));
        boolean atHand = task.stocks().get(bar.stock()).most() > used[bar.stock()];
        if (atHand && IntStream.of(counts).anyMatch(count -> count > 0)) {
            Arrays.setAll(wanted, kind -> wanted[kind] - counts[kind]);
            used[bar.stock()] += task.stocks().get(bar.stock()).isBought() ? 0 : 1;
            taken.add(new CuttingPattern(bar.stock(), counts));
        }
    }

    private CuttingPlan finished() {
        List<CuttingPattern> bars = new ArrayList<>(taken);
        bars.addAll(BarByBar.pack(task, wanted, used));
        return LocalImprovement.improve(task, bars);
    }
}
