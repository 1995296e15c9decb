package boltlore.trades.cutting.packing;

import java.util.ArrayList;
import java.util.List;

/**
 * The most valuable choice of kinds for every room at once: dynamic programming over a grid of lengths, each kind at most
 * as often as it is wanted. Rounding lengths up gives choices that fit; rounding them down gives values that nothing that
 * fits can exceed.
 */
final class Knapsack {

    private static final int MOST_CELLS = 20_000;
    private static final int LEAST_CELLS = 4_000;
    private static final int MOST_STEPS = 2_000_000;

    /** What is worked out a few times only may be worked out more finely than what is hundreds of times. */
    private static final int FINER = 8;

    /** So many of a kind, taken all or not at all. */
    private record Lot(int kind, int times, int cells, long value) {}

    private final long step;
    private final List<Lot> lots = new ArrayList<>();
    private final long[] best;
    private final long[][] takes;
    private final int kinds;

    private Knapsack(Task task, int[] wanted, long[] values, boolean up, boolean fine) {
        kinds = wanted.length;
        long widest = task.stocks().stream().mapToLong(Stock::room).max().orElse(1);
        step = step(widest, wanted, fine ? FINER : 1);
        int cells = (int) (widest / step);
        for (int kind = 0; kind < kinds; kind++) {
            long length = task.kinds().get(kind).length();
            lots(kind, (int) (up ? (length + step - 1) / step : length / step), wanted[kind], values[kind], cells);
        }
        best = new long[cells + 1];
        takes = new long[lots.size()][cells / Long.SIZE + 1];
        for (int i = 0; i < lots.size(); i++) {
            offer(lots.get(i), takes[i]);
        }
    }

    /** Choices that fit. */
    static Knapsack fitting(Task task, int[] wanted, long[] values, boolean fine) {
        return new Knapsack(task, wanted, values, true, fine);
    }

    /** Values that are never too small. */
    static Knapsack bounding(Task task, int[] wanted, long[] values) {
        return new Knapsack(task, wanted, values, false, true);
    }

    private static long step(long widest, int[] wanted, int finer) {
        long rows = 1;
        for (int count : wanted) {
            rows += Integer.SIZE - Integer.numberOfLeadingZeros(count);
        }
        long cells = finer * Math.max(LEAST_CELLS, Math.min(MOST_CELLS, MOST_STEPS / rows));
        return Math.max(1, (widest + cells - 1) / cells);
    }

    /** Lots of 1, 2, 4 … and what remains, which together make every number up to the one wanted. */
    private void lots(int kind, int cellsOfOne, int wanted, long value, int cells) {
        int left = Math.min(wanted, cellsOfOne == 0 ? wanted : cells / cellsOfOne);
        for (int times = 1; left > 0 && value > 0; times *= 2) {
            int lot = Math.min(times, left);
            lots.add(new Lot(kind, lot, lot * cellsOfOne, lot * value));
            left -= lot;
        }
    }

    private void offer(Lot lot, long[] taken) {
        for (int cell = best.length - 1; cell >= lot.cells(); cell--) {
            long with = best[cell - lot.cells()] + lot.value();
            if (with > best[cell]) {
                best[cell] = with;
                taken[cell / Long.SIZE] |= 1L << cell;
            }
        }
    }

    long value(long room) {
        return room < 0 ? 0 : best[cell(room)];
    }

    /** How many of each kind the most valuable choice for that room takes. */
    int[] counts(long room) {
        int[] counts = new int[kinds];
        int cell = cell(room);
        for (int i = lots.size() - 1; i >= 0; i--) {
            if ((takes[i][cell / Long.SIZE] >> cell & 1) != 0) {
                counts[lots.get(i).kind()] += lots.get(i).times();
                cell -= lots.get(i).cells();
            }
        }
        return counts;
    }

    private int cell(long room) {
        return (int) Math.min(best.length - 1, room / step);
    }
}
