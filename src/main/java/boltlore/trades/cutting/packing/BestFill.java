package boltlore.trades.cutting.packing;

import java.util.Arrays;

/** Fills one bar as full as it can be with what is still wanted, by searching longest first up to a number of steps. */
final class BestFill {

    private static final int MOST_STEPS = 5_000;

    private final Task task;
    private final long[] lengths;
    private final int[] wanted;
    private final int[] taken;
    private final long[] behind;
    private Load load;
    private long room;
    private long best;
    private int[] bestTaken;
    private int steps;

    /** @param wanted how many of each kind may be taken */
    BestFill(Task task, int[] wanted) {
        this.task = task;
        this.lengths = task.kinds().stream().mapToLong(PieceType::length).toArray();
        this.wanted = wanted.clone();
        this.taken = new int[wanted.length];
        this.bestTaken = taken.clone();
        this.behind = new long[wanted.length + 1];
        this.load = task.empty();
        for (int kind = wanted.length - 1; kind >= 0; kind--) {
            behind[kind] = behind[kind + 1] + wanted[kind] * lengths[kind];
        }
    }

    /** The fill with one of that kind in it; all zeros where that one alone does not fit. */
    int[] with(int kind, long roomOfBar) {
        begin(roomOfBar);
        add(kind, 1);
        if (load.total() <= room) {
            search(0);
        }
        return bestTaken;
    }

    int[] any(long roomOfBar) {
        begin(roomOfBar);
        search(0);
        return bestTaken;
    }

    private void begin(long roomOfBar) {
        room = roomOfBar;
        load = task.empty();
        best = 0;
        steps = 0;
        Arrays.fill(taken, 0);
        bestTaken = taken.clone();
    }

    private void search(int from) {
        note();
        for (int kind = from; kind < wanted.length && canImprove(kind); kind++) {
            if (taken[kind] < wanted[kind] && load.lengths() + lengths[kind] <= room) {
                add(kind, 1);
                if (load.total() <= room) {
                    search(kind);
                }
                add(kind, -1);
            }
        }
    }

    private void note() {
        steps++;
        if (load.lengths() > best) {
            best = load.lengths();
            bestTaken = taken.clone();
        }
    }

    private boolean canImprove(int kind) {
        return steps < MOST_STEPS && Math.min(room, load.lengths() + behind[kind]) > best;
    }

    private void add(int kind, int times) {
        taken[kind] += times;
        load.add(kind, times);
    }
}
