package boltlore.trades.cutting.packing;

import boltlore.trades.cutting.packing.ColumnGeneration.Share;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * From shares of bars to whole bars: takes the whole bars of the linear program, or where it has none its largest share,
 * solves again for what is left, and at every step tries to finish bar by bar. Where what is left can no longer end
 * cheaper than the best plan, it goes back and takes the next largest share instead, a few times on each way: a limited
 * discrepancy search (W. D. Harvey and M. L. Ginsberg, Limited discrepancy search, IJCAI 1995, from memory).
 */
final class DivingHeuristic {

    /** Times that it begins anew, each but the first with shares weighed a little by chance. */
    private static final int MOST_DIVES = 6;

    /** Linear programs solved in one. */
    private static final int MOST_PROGRAMS = 150;

    /** Shares other than the largest that one way takes. */
    private static final int MOST_TURNS = 4;

    private static final double CHANCE = 0.3;

    private static final double ALMOST = 1e-3;

    private final Task task;
    private final Set<CuttingPattern> patterns;
    private final long bound;
    private CuttingPlan best;
    private final Random dice = new Random(1);
    private double chance;
    private int programs;

    private DivingHeuristic(Task task, Set<CuttingPattern> patterns, CuttingPlan known, long bound) {
        this.task = task;
        this.patterns = patterns;
        this.best = known;
        this.bound = bound;
    }

    /**
     * The best way that was met, which is the given one where none is better; ends early at the bound.
     *
     * @param solved the linear program of the whole task
     * @param patterns ways to fill a bar that are known; those that are met join them
     */
    static CuttingPlan from(
            Task task, ColumnGeneration solved, Set<CuttingPattern> patterns, CuttingPlan known, long bound) {
        DivingHeuristic heuristic = new DivingHeuristic(task, patterns, known, bound);
        // With bars of several lengths the bound may lie between two sums that none can cost: once must do.
        int dives = task.stocks().size() > 1 ? 1 : MOST_DIVES;
        for (int dive = 0; dive < dives && heuristic.best.cost() > bound; dive++) {
            heuristic.chance = dive == 0 ? 0 : CHANCE;
            heuristic.programs = 0;
            heuristic.down(heuristic.new Taken(), solved, MOST_TURNS);
        }
        return heuristic.best;
    }

    private boolean ended() {
        return best.cost() <= bound || programs >= MOST_PROGRAMS;
    }

    private void down(Taken before, ColumnGeneration program, int turns) {
        Taken whole = before.withWhole(program.shares());
        List<Share> shares = program.shares().stream()
                .filter(share -> share.amount() % 1 > ALMOST && share.amount() % 1 < 1 - ALMOST)
                .map(share -> new Share(share.bar(), share.amount() % 1 + chance * dice.nextDouble()))
                .sorted(Comparator.comparingDouble(Share::amount).reversed())
                .toList();
        if (whole.bars.size() > before.bars.size()) {
            further(whole, turns);
        }
        for (int turn = 0; turn <= turns && turn < shares.size() && !ended(); turn++) {
            further(whole.with(shares.get(turn).bar()), turns - turn);
        }
    }

    private void further(Taken taken, int turns) {
        best = best.orBetter(taken.finished());
        if (ended() || taken.isAll()) {
            return;
        }
        programs++;
        ColumnGeneration program = ColumnGeneration.solved(task, taken.wanted, taken.used, patterns);
        if (taken.cost + program.cost() <= best.cost() - 1 + ALMOST) {
            down(taken, program, turns);
        }
    }

    /** Bars that are decided on, and what is still wanted then. */
    private final class Taken {

        private final int[] wanted;
        private final int[] used;
        private final List<CuttingPattern> bars;
        private long cost;

        Taken() {
            wanted = task.counts();
            used = new int[task.stocks().size()];
            bars = new ArrayList<>();
        }

        private Taken(Taken other) {
            wanted = other.wanted.clone();
            used = other.used.clone();
            bars = new ArrayList<>(other.bars);
            cost = other.cost;
        }

        Taken withWhole(List<Share> shares) {
            Taken more = new Taken(this);
            for (Share share : shares) {
                for (int times = (int) (share.amount() + ALMOST); times > 0; times--) {
                    more.take(share.bar());
                }
            }
            return more;
        }

        Taken with(CuttingPattern bar) {
            Taken more = new Taken(this);
            more.take(bar);
            return more;
        }

        /** What it holds more than is still wanted is left off. */
        private void take(CuttingPattern bar) {
            int[] counts = bar.counts();
            Arrays.setAll(counts, kind -> Math.min(counts[kind], wanted[kind]));
            Stock stock = task.stocks().get(bar.stock());
            if (stock.most() > used[bar.stock()] && IntStream.of(counts).anyMatch(count -> count > 0)) {
                Arrays.setAll(wanted, kind -> wanted[kind] - counts[kind]);
                used[bar.stock()] += stock.isBought() ? 0 : 1;
                cost += stock.cost();
                bars.add(new CuttingPattern(bar.stock(), counts));
            }
        }

        boolean isAll() {
            return IntStream.of(wanted).allMatch(count -> count == 0);
        }

        CuttingPlan finished() {
            List<CuttingPattern> all = new ArrayList<>(bars);
            all.addAll(BarByBar.pack(task, wanted, used));
            return LocalImprovement.improve(task, all);
        }
    }
}
