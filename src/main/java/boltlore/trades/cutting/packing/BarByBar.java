package boltlore.trades.cutting.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Bar after bar, each as full as can be around the longest piece that is still wanted; of the stocks, the one that costs
 * least for the length that it yields. After the idea of minimum bin slack: J. N. D. Gupta and J. C. Ho, A new heuristic
 * algorithm for the one-dimensional bin-packing problem, 1999 (from memory).
 */
final class BarByBar {

    private final Task task;
    private final int[] wanted;
    private final int[] left;
    private final List<CuttingPattern> bars = new ArrayList<>();

    private record Offer(CuttingPattern bar, long lengths, long cost, long room) {

        boolean betterThan(Offer other) {
            long mine = cost * other.lengths;
            long its = other.cost * lengths;
            return mine != its ? mine < its : lengths * other.room > other.lengths * room;
        }
    }

    /** @param used how many bars of each stock are taken already */
    private BarByBar(Task task, int[] wanted, int[] used) {
        this.task = task;
        this.wanted = wanted.clone();
        this.left = new int[task.stocks().size()];
        Arrays.setAll(left, stock -> task.stocks().get(stock).most() - used[stock]);
    }

    static List<CuttingPattern> pack(Task task, int[] wanted, int[] used) {
        return new BarByBar(task, wanted, used).fill();
    }

    private List<CuttingPattern> fill() {
        for (int longest = longest(); longest >= 0; longest = longest()) {
            Offer best = best(longest);
            bars.add(best.bar());
            Arrays.setAll(wanted, kind -> wanted[kind] - best.bar().of(kind));
            left[best.bar().stock()] -= task.stocks().get(best.bar().stock()).isBought() ? 0 : 1;
        }
        return bars;
    }

    private int longest() {
        for (int kind = 0; kind < wanted.length; kind++) {
            if (wanted[kind] > 0) {
                return kind;
            }
        }
        return -1;
    }

    private Offer best(int longest) {
        Offer best = null;
        BestFill filler = new BestFill(task, wanted);
        for (int stock = 0; stock < left.length; stock++) {
            Offer offer = left[stock] > 0 ? offer(stock, filler, longest) : null;
            if (offer != null && offer.lengths() > 0 && (best == null || offer.betterThan(best))) {
                best = offer;
            }
        }
        if (best == null) {
            throw new IllegalArgumentException(
                    "No stock has room for " + task.kinds().get(longest));
        }
        return best;
    }

    private Offer offer(int stock, BestFill filler, int longest) {
        Stock bars = task.stocks().get(stock);
        int[] counts = filler.with(longest, bars.room());
        long lengths = 0;
        for (int kind = 0; kind < counts.length; kind++) {
            lengths += counts[kind] * task.kinds().get(kind).length();
        }
        return new Offer(new CuttingPattern(stock, counts), lengths, bars.cost(), bars.room());
    }
}
