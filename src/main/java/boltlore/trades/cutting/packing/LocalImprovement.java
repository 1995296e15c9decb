package boltlore.trades.cutting.packing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Makes a plan better without packing anew: cheaper bars where they do, and bars at hand before bought ones. */
final class LocalImprovement {

    /** Share of a bar at hand that may become scrap when it is used up. */
    private static final double SMALL_SCRAP = 0.15;

    private final Task task;
    private final List<CuttingPattern> bars;
    private final int[] left;

    private LocalImprovement(Task task, List<CuttingPattern> bars) {
        this.task = task;
        this.bars = new ArrayList<>(bars);
        this.left = task.stocks().stream().mapToInt(Stock::most).toArray();
        bars.forEach(bar -> take(bar.stock(), 1));
    }

    static CuttingPlan improve(Task task, List<CuttingPattern> bars) {
        LocalImprovement improved = new LocalImprovement(task, bars);
        improved.cheapen();
        improved.useUp();
        improved.cheapen();
        return CuttingPlan.of(task, improved.bars);
    }

    private void take(int stock, int number) {
        left[stock] -= task.stocks().get(stock).isBought() ? 0 : number;
    }

    /** Puts what is on each bar onto the cheapest that holds it; of equal cost, the shortest. */
    private void cheapen() {
        bars.removeIf(bar -> bar.pieces() == 0);
        bars.replaceAll(bar -> {
            take(bar.stock(), -1);
            int best = cheapest(task.load(bar)).orElse(bar.stock());
            take(best, 1);
            return bar.on(best);
        });
    }

    private Optional<Integer> cheapest(long load) {
        return IntStream.range(0, left.length)
                .filter(stock -> left[stock] > 0 && task.stocks().get(stock).room() >= load)
                .boxed()
                .min(Comparator.comparingLong(
                                (Integer stock) -> task.stocks().get(stock).cost())
                        .thenComparingLong(stock -> task.stocks().get(stock).room()));
    }

    /** Moves pieces from bought bars to bars at hand that nothing is on yet, where little or no more becomes scrap by it. */
    private void useUp() {
        IntStream.range(0, left.length)
                .filter(stock -> !task.stocks().get(stock).isBought() && left[stock] > 0)
                .boxed()
                .sorted(Comparator.comparingLong(
                        stock -> task.stocks().get(stock).room()))
                .forEach(this::useUp);
    }

    private void useUp(int stock) {
        for (int i = bars.size() - 1; i >= 0 && left[stock] > 0; i--) {
            CuttingPattern bar = bars.get(i);
            if (task.stocks().get(bar.stock()).isBought()) {
                useUp(stock, i);
            }
        }
        bars.removeIf(bar -> bar.pieces() == 0);
    }

    private void useUp(int stock, int from) {
        CuttingPattern bar = bars.get(from);
        int[] moved =
                new BestFill(task, bar.counts()).any(task.stocks().get(stock).room());
        CuttingPattern onHand = new CuttingPattern(stock, moved);
        CuttingPattern rest = bar.less(moved);
        if (onHand.pieces() > 0 && isWorthIt(onHand, rest, bar)) {
            take(stock, 1);
            bars.set(from, rest);
            bars.add(onHand);
        }
    }

    /** Where nearly all of it is used, a little scrap is better than two rests in the rack. */
    private boolean isWorthIt(CuttingPattern onHand, CuttingPattern rest, CuttingPattern bar) {
        long scrap = task.scrap(onHand);
        return scrap <= SMALL_SCRAP * task.stocks().get(onHand.stock()).room()
                || scrap + scrap(rest) <= task.scrap(bar);
    }

    private long scrap(CuttingPattern bar) {
        return bar.pieces() == 0 ? 0 : task.scrap(bar);
    }
}
