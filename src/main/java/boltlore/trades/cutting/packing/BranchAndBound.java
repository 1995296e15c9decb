package boltlore.trades.cutting.packing;

import java.util.ArrayList;
import java.util.List;

/**
 * Searches all ways, up to a number of steps: the longest piece that is still wanted must lie on some bar, so every bar and
 * every fullest choice of pieces beside it is tried. Ways that cannot cost less than the best one known are cut off.
 */
final class BranchAndBound {

    private static final int MOST_STEPS = 150_000;
    private static final int MOST_PIECES = 60;

    private final Task task;
    private final long bound;
    private final Affordable affordable;
    private final int[] wanted;
    private final int[] left;
    private final List<CuttingPattern> bars = new ArrayList<>();
    private CuttingPlan best;
    private long cost;
    private int steps;
    private boolean cutShort;

    BranchAndBound(Task task, CuttingPlan known, long bound, Affordable affordable) {
        this.task = task;
        this.bound = bound;
        this.affordable = affordable;
        this.best = known;
        this.wanted = task.counts();
        this.left = task.stocks().stream().mapToInt(Stock::most).toArray();
        cutShort = task.pieces() > MOST_PIECES;
        if (!cutShort) {
            search();
        }
    }

    CuttingPlan best() {
        return best;
    }

    /** Whether no way was left out, so that none costs less than the best. */
    boolean searchedAll() {
        return !cutShort;
    }

    private void search() {
        int longest = 0;
        while (longest < wanted.length && wanted[longest] == 0) {
            longest++;
        }
        if (longest == wanted.length) {
            best = best.orBetter(LocalImprovement.improve(task, bars));
        } else if (cost + atLeast() < best.cost()) {
            search(longest);
        }
    }

    private void search(int longest) {
        for (int stock = 0; stock < left.length && !ended(); stock++) {
            if (left[stock] > 0 && cost + task.stocks().get(stock).cost() < best.cost()) {
                new Bar(stock, longest).fill();
            }
        }
    }

    private boolean ended() {
        cutShort |= ++steps > MOST_STEPS && best.cost() > bound;
        return cutShort || best.cost() <= bound;
    }

    /** What the rest costs at least, by its length. */
    private long atLeast() {
        long length = 0;
        for (int kind = 0; kind < wanted.length; kind++) {
            length += wanted[kind] * task.kinds().get(kind).length();
        }
        double cheapest = Double.MAX_VALUE;
        for (int stock = 0; stock < left.length; stock++) {
            Stock bar = task.stocks().get(stock);
            length -= bar.isBought() ? 0 : left[stock] * bar.room();
            cheapest = bar.isBought() ? Math.min(cheapest, (double) bar.cost() / bar.room()) : cheapest;
        }
        return length <= 0 ? 0 : affordable.atLeast((long) Math.ceil(length * cheapest * (1 - 1e-9)), length);
    }

    /** One bar being filled: all choices to which no further piece can be added. */
    private final class Bar {

        private final int stock;
        private final int[] counts = new int[wanted.length];
        private final Load load = task.empty();

        Bar(int stock, int longest) {
            this.stock = stock;
            add(longest, 1);
        }

        void fill() {
            if (fits()) {
                fill(0);
            }
        }

        private boolean fits() {
            return load.total() <= task.stocks().get(stock).room();
        }

        private void add(int kind, int times) {
            counts[kind] += times;
            load.add(kind, times);
        }

        private boolean takesOneMore(int kind) {
            add(kind, 1);
            boolean takes = counts[kind] <= wanted[kind] && fits();
            add(kind, -1);
            return takes;
        }

        private void fill(int kind) {
            if (kind == counts.length) {
                close();
            } else if (takesOneMore(kind)) {
                add(kind, 1);
                fill(kind);
                add(kind, -1);
                if (!ended()) {
                    fill(kind + 1);
                }
            } else {
                fill(kind + 1);
            }
        }

        private void close() {
            for (int kind = 0; kind < counts.length; kind++) {
                if (takesOneMore(kind)) {
                    return;
                }
            }
            change(1);
            bars.add(new CuttingPattern(stock, counts));
            search();
            bars.remove(bars.size() - 1);
            change(-1);
        }

        private void change(int sign) {
            for (int kind = 0; kind < counts.length; kind++) {
                wanted[kind] -= sign * counts[kind];
            }
            cost += sign * task.stocks().get(stock).cost();
            left[stock] -= task.stocks().get(stock).isBought() ? 0 : sign;
        }
    }
}
