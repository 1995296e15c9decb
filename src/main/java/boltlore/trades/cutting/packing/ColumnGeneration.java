package boltlore.trades.cutting.packing;

import boltlore.trades.cutting.packing.Simplex.Column;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The cutting-stock problem with parts of bars allowed: a linear program over all ways to fill a bar, of which each is made
 * only when it is worth while. Source: P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock
 * problem, Operations Research 9 (1961), from memory.
 */
final class ColumnGeneration {

    private static final int MOST_ROUNDS = 600;
    private static final double SCALE = 1e6;
    private static final double WORTH_WHILE = 1e-7;

    /** A way to fill a bar that saves less than this share of a bar's cost is not worth another round. */
    private static final double LEAST_SAVING = 1e-4;

    /** A way to fill a bar, and how many of it. */
    record Share(CuttingPattern bar, double amount) {}

    private final Task task;
    private final int[] wanted;
    private final int rows;
    private final long dearest;
    private final Simplex simplex;
    private final IdentityHashMap<Column, CuttingPattern> ways = new IdentityHashMap<>();

    private ColumnGeneration(Task task, int[] wanted, int[] used) {
        this.task = task;
        this.wanted = wanted.clone();
        this.rows = wanted.length + task.stocks().size();
        this.dearest = task.stocks().stream().mapToLong(Stock::cost).max().orElse(0);
        Column[] basis = new Column[rows];
        double[] demand = new double[rows];
        for (int kind = 0; kind < wanted.length; kind++) {
            demand[kind] = wanted[kind];
            basis[kind] = column(alone(kind));
        }
        for (int stock = 0; stock < task.stocks().size(); stock++) {
            int row = wanted.length + stock;
            demand[row] = task.stocks().get(stock).most() - used[stock];
            basis[row] = unit(row, 1);
        }
        simplex = new Simplex(basis, demand);
    }

    /** @param used how many bars of each stock are taken already */
    static ColumnGeneration solved(Task task, int[] wanted, int[] used) {
        ColumnGeneration program = new ColumnGeneration(task, wanted, used);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Column next = program.next(program.simplex.prices());
            if (next == null) {
                break;
            }
            program.simplex.enter(next);
        }
        return program;
    }

    /** What one of each kind costs in it. */
    double[] prices() {
        return simplex.prices();
    }

    List<Share> shares() {
        List<Share> shares = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            CuttingPattern bar = ways.get(simplex.column(row));
            if (bar != null && simplex.amount(row) > WORTH_WHILE) {
                shares.add(new Share(bar, simplex.amount(row)));
            }
        }
        return shares;
    }

    /** A column that makes it cheaper: one that lets a row off, or a way to fill a bar; null where there is none. */
    private @Nullable Column next(double[] prices) {
        for (int row = 0; row < rows; row++) {
            if (row < wanted.length ? prices[row] < -WORTH_WHILE : prices[row] > WORTH_WHILE) {
                return unit(row, row < wanted.length ? -1 : 1);
            }
        }
        return bestWay(prices);
    }

    private @Nullable Column bestWay(double[] prices) {
        SlantedKnapsack knapsack = SlantedKnapsack.fitting(task, wanted, values(prices));
        int best = -1;
        double mostSaved = LEAST_SAVING * SCALE * dearest;
        for (int stock = 0; stock < task.stocks().size(); stock++) {
            double saved = knapsack.value(room(stock)) + (prices[wanted.length + stock] - cost(stock)) * SCALE;
            if (saved > mostSaved) {
                mostSaved = saved;
                best = stock;
            }
        }
        return best < 0 ? null : column(new CuttingPattern(best, knapsack.counts(room(best))));
    }

    private long[] values(double[] prices) {
        return Arrays.stream(prices)
                .limit(wanted.length)
                .mapToLong(price -> Math.round(Math.max(0, price) * SCALE))
                .toArray();
    }

    private long room(int stock) {
        return task.stocks().get(stock).room();
    }

    private long cost(int stock) {
        return task.stocks().get(stock).cost();
    }

    private Column column(CuttingPattern bar) {
        double[] entries = new double[rows];
        for (int kind = 0; kind < wanted.length; kind++) {
            entries[kind] = bar.of(kind);
        }
        // Bars that can be bought in any number need no row; theirs is there and never binds.
        entries[wanted.length + bar.stock()] = task.stocks().get(bar.stock()).isBought() ? 0 : 1;
        Column column = new Column(entries, cost(bar.stock()));
        ways.put(column, bar);
        return column;
    }

    private Column unit(int row, int entry) {
        double[] entries = new double[rows];
        entries[row] = entry;
        return new Column(entries, 0);
    }

    /** A bought bar of that kind alone, of the stock that makes it cheapest. */
    private CuttingPattern alone(int kind) {
        CuttingPattern best = null;
        for (int stock = 0; stock < task.stocks().size(); stock++) {
            if (task.stocks().get(stock).isBought()) {
                CuttingPattern bar = alone(kind, stock);
                boolean cheaper = best == null || cost(stock) * best.of(kind) < cost(best.stock()) * bar.of(kind);
                best = bar.of(kind) > 0 && cheaper ? bar : best;
            }
        }
        return Objects.requireNonNull(best, "no stock has room for it");
    }

    private CuttingPattern alone(int kind, int stock) {
        int[] counts = new int[wanted.length];
        Load load = task.empty();
        for (int times = 1; times <= Math.max(1, wanted[kind]); times++) {
            load.add(kind, 1);
            counts[kind] = load.total() <= task.stocks().get(stock).room() ? times : counts[kind];
        }
        return new CuttingPattern(stock, counts);
    }
}
