package boltlore.trades.cutting.packing;

import boltlore.trades.cutting.packing.Simplex.Column;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The cutting-stock problem with parts of bars allowed: a linear program over all ways to fill a bar, of which each is made
 * only when it is worth while. Source: P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock
 * problem, Operations Research 9 (1961), from memory.
 */
final class ColumnGeneration {

    private static final int MOST_ROUNDS = 20_000;
    private static final double SCALE = 1e6;
    private static final double WORTH_WHILE = 1e-7;

    /** A way to fill a bar that saves less than this share of a bar's cost is not worth another round. */
    private static final double LEAST_SAVING = 1e-4;

    /** Ways to fill a bar that one round makes, each with this part of the bar less on it than the one before. */
    private static final int MOST_WAYS = 12;

    private static final int SPARED = 2_000;

    /** Less of a column than this comes of the trace that the program asks for more. */
    private static final double A_LITTLE = 1e-3;

    private static final double DEARER = 1.1;

    /** A way to fill a bar, and how many of it. */
    record Share(CuttingPattern bar, double amount) {}

    private final Task task;
    private final int[] wanted;
    private final int rows;
    private final long dearest;
    private final Simplex simplex;
    private final Set<CuttingPattern> known;
    private final List<Column> ready = new ArrayList<>();
    private final IdentityHashMap<Column, CuttingPattern> ways = new IdentityHashMap<>();

    private ColumnGeneration(Task task, int[] wanted, int[] used, Set<CuttingPattern> known) {
        this.task = task;
        this.wanted = wanted.clone();
        this.rows = wanted.length + task.stocks().size();
        this.dearest = task.stocks().stream().mapToLong(Stock::cost).max().orElse(0);
        this.known = known;
        Column[] basis = new Column[rows];
        double[] demand = new double[rows];
        for (int kind = 0; kind < wanted.length; kind++) {
            demand[kind] = wanted[kind];
            basis[kind] = Column.single(kind, 1, usualPrice(kind));
            ready.add(column(alone(kind)));
        }
        for (int stock = 0; stock < task.stocks().size(); stock++) {
            int row = wanted.length + stock;
            demand[row] = task.stocks().get(stock).most() - used[stock];
            basis[row] = Column.single(row, 1, 0);
        }
        known.stream().filter(this::fits).map(this::column).forEach(ready::add);
        simplex = new Simplex(basis, demand);
    }

    /**
     * @param used how many bars of each stock are taken already
     * @param known ways to fill a bar that were met before; those that are made join them
     */
    static ColumnGeneration solved(Task task, int[] wanted, int[] used, Set<CuttingPattern> known) {
        ColumnGeneration program = new ColumnGeneration(task, wanted, used, known);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Column next = program.next(program.simplex.prices());
            if (next == null) {
                if (program.standInsLeft()) {
                    continue;
                }
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

    /** What all that is wanted costs with parts of bars. */
    double cost() {
        return simplex.cost();
    }

    List<Share> shares() {
        List<Share> shares = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            CuttingPattern bar = ways.get(simplex.column(row));
            if (bar != null && simplex.amount(row) > A_LITTLE) {
                shares.add(new Share(bar, simplex.amount(row)));
            }
        }
        return shares;
    }

    /**
     * Makes what still stands in for a piece without a bar dearer, so that it gives way: prices that begin near those of
     * the end keep the program from wandering. Source of the idea: O. du Merle and others, Stabilized column generation,
     * Discrete Mathematics 194 (1999), from memory.
     */
    private boolean standInsLeft() {
        boolean left = false;
        for (int row = 0; row < rows; row++) {
            Column column = simplex.column(row);
            if (!ways.containsKey(column) && column.cost() > 0 && simplex.amount(row) > A_LITTLE) {
                simplex.reprice(row, column.at(column.cost() * DEARER));
                left = true;
            }
        }
        return left;
    }

    /** What one piece costs by its length alone, and a little more. */
    private double usualPrice(int kind) {
        double rate = task.stocks().stream()
                .filter(Stock::isBought)
                .mapToDouble(stock -> (double) stock.cost() / stock.room())
                .min()
                .orElse(1);
        return DEARER * rate * task.kinds().get(kind).length();
    }

    private boolean fits(CuttingPattern bar) {
        return IntStream.range(0, wanted.length).allMatch(kind -> bar.of(kind) <= wanted[kind]);
    }

    /** A column that makes it cheaper: one that lets a row off, or a way to fill a bar; null where there is none. */
    private @Nullable Column next(double[] prices) {
        for (int row = 0; row < rows; row++) {
            if (row < wanted.length ? prices[row] < -WORTH_WHILE : prices[row] > WORTH_WHILE) {
                return Column.single(row, row < wanted.length ? -1 : 1, 0);
            }
        }
        Column best = null;
        double mostSaved = LEAST_SAVING * dearest;
        for (Column column : ready) {
            double saved = column.saving(prices);
            if (saved > mostSaved) {
                mostSaved = saved;
                best = column;
            }
        }
        return best == null ? bestWay(prices) : best;
    }

    private @Nullable Column bestWay(double[] prices) {
        Column quick = bestWay(prices, false);
        return quick == null ? bestWay(prices, true) : quick;
    }

    private @Nullable Column bestWay(double[] prices, boolean fine) {
        SlantedKnapsack knapsack = SlantedKnapsack.fitting(task, wanted, values(prices), fine);
        int best = -1;
        double mostSaved = LEAST_SAVING * SCALE * dearest;
        for (int stock = 0; stock < task.stocks().size(); stock++) {
            double saved = knapsack.value(room(stock)) + (prices[wanted.length + stock] - cost(stock)) * SCALE;
            if (saved > mostSaved) {
                mostSaved = saved;
                best = stock;
            }
        }
        return best < 0 ? null : ways(knapsack, best);
    }

    /** The best way to fill that bar, and others that fill it a little less and may do in later rounds. */
    private @Nullable Column ways(SlantedKnapsack knapsack, int stock) {
        Column best = null;
        long spared = room(stock) / SPARED;
        for (int i = 0; i < MOST_WAYS; i++) {
            CuttingPattern bar = new CuttingPattern(stock, knapsack.counts(room(stock) - i * spared));
            if (known.add(bar)) {
                Column column = column(bar);
                ready.add(column);
                best = best == null ? column : best;
            } else if (i == 0) {
                return null;
            }
        }
        return best;
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

    /** Bars that can be bought in any number need no row; theirs is there and never binds. */
    private Column column(CuttingPattern bar) {
        boolean atHand = !task.stocks().get(bar.stock()).isBought();
        int[] touched = IntStream.concat(
                        IntStream.range(0, wanted.length).filter(kind -> bar.of(kind) > 0),
                        atHand ? IntStream.of(wanted.length + bar.stock()) : IntStream.empty())
                .toArray();
        double[] entries = Arrays.stream(touched)
                .mapToDouble(row -> row < wanted.length ? bar.of(row) : 1)
                .toArray();
        Column column = new Column(touched, entries, cost(bar.stock()));
        ways.put(column, bar);
        return column;
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
