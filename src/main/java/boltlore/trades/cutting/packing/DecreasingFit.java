package boltlore.trades.cutting.packing;

import java.util.ArrayList;
import java.util.List;

/**
 * The two textbook rules for one stock: pieces one by one, longest first, each into a bar that still takes it, else into a
 * new one. Source: D. S. Johnson, Near-optimal bin packing algorithms, 1973 (from memory).
 */
final class DecreasingFit {

    enum Rule {
        /** The first bar that takes it. */
        FIRST,
        /** The fullest bar that takes it. */
        BEST
    }

    private static final class Open {

        private final int[] counts;
        private final Load load;

        Open(Task task) {
            counts = new int[task.kinds().size()];
            load = task.empty();
        }
    }

    private final Task task;
    private final int stock;
    private final Rule rule;
    private final List<Open> bars = new ArrayList<>();

    private DecreasingFit(Task task, int stock, Rule rule) {
        this.task = task;
        this.stock = stock;
        this.rule = rule;
    }

    /** The bars of one stock, which has room for every kind and as many bars as are asked for. */
    static List<CuttingPattern> pack(Task task, int stock, Rule rule) {
        DecreasingFit fit = new DecreasingFit(task, stock, rule);
        for (int kind = 0; kind < task.kinds().size(); kind++) {
            for (int i = 0; i < task.kinds().get(kind).count(); i++) {
                fit.place(kind);
            }
        }
        return fit.bars.stream()
                .map(bar -> new CuttingPattern(stock, bar.counts))
                .toList();
    }

    private void place(int kind) {
        Open chosen = null;
        for (Open bar : bars) {
            boolean fuller = chosen == null || bar.load.total() > chosen.load.total();
            boolean better = chosen == null || (rule == Rule.BEST && fuller);
            chosen = better && takes(bar, kind) ? bar : chosen;
        }
        Open bar = chosen == null ? opened() : chosen;
        bar.counts[kind]++;
        bar.load.add(kind, 1);
    }

    private Open opened() {
        Open bar = new Open(task);
        bars.add(bar);
        return bar;
    }

    private boolean takes(Open bar, int kind) {
        bar.load.add(kind, 1);
        boolean takes = bar.load.total() <= task.stocks().get(stock).room();
        bar.load.add(kind, -1);
        return takes;
    }
}
