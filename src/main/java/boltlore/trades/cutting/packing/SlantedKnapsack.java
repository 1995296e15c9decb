package boltlore.trades.cutting.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Knapsacks for bars that lose length at slanted ends: one for each choice of slants that a bar may hold, with the room
 * that is left beside what these slants lose. Where there are many slants, one for all together.
 */
final class SlantedKnapsack {

    private static final int MOST_SLANTS = 3;

    /** @param lost length that a bar loses when it holds these slants */
    private record CuttingPlan(Knapsack knapsack, long lost) {}

    private final List<CuttingPlan> choices = new ArrayList<>();

    private SlantedKnapsack(Task task, int[] wanted, long[] values, boolean fitting, boolean fine) {
        int[] slants = IntStream.range(0, task.exposure().size())
                .filter(slant -> isWanted(task, wanted, values, slant))
                .toArray();
        if (slants.length > MOST_SLANTS) {
            Knapsack all =
                    fitting ? Knapsack.fitting(task, wanted, values, fine) : Knapsack.bounding(task, wanted, values);
            choices.add(new CuttingPlan(all, fitting ? task.mostExposed() : 0));
            return;
        }
        for (int held = 0; held < 1 << slants.length; held++) {
            boolean[] holds = new boolean[task.exposure().size()];
            long lost = 0;
            for (int i = 0; i < slants.length; i++) {
                holds[slants[i]] = (held >> i & 1) != 0;
                lost += holds[slants[i]] ? lost(task, wanted, slants[i], fitting) : 0;
            }
            int[] allowed = allowed(task, wanted, holds);
            Knapsack of =
                    fitting ? Knapsack.fitting(task, allowed, values, fine) : Knapsack.bounding(task, allowed, values);
            choices.add(new CuttingPlan(of, lost));
        }
    }

    /**
     * Choices that fit.
     *
     * @param fine whether lengths are rounded less, which takes longer
     */
    static SlantedKnapsack fitting(Task task, int[] wanted, long[] values, boolean fine) {
        return new SlantedKnapsack(task, wanted, values, true, fine);
    }

    /** Values that are never too small. */
    static SlantedKnapsack bounding(Task task, int[] wanted, long[] values) {
        return new SlantedKnapsack(task, wanted, values, false, true);
    }

    private static boolean isWanted(Task task, int[] wanted, long[] values, int slant) {
        return IntStream.range(0, wanted.length)
                .anyMatch(kind -> wanted[kind] > 0
                        && values[kind] > 0
                        && task.kinds().get(kind).ends().slant() == slant);
    }

    /** What a bar that holds the slant loses at most, or, for a bound, at least. */
    private static long lost(Task task, int[] wanted, int slant, boolean most) {
        boolean pairs = IntStream.range(0, wanted.length)
                .anyMatch(kind -> wanted[kind] > 0
                        && task.kinds().get(kind).ends().slant() == slant
                        && task.kinds().get(kind).ends().single() > 0);
        return most || !pairs ? 2 * task.exposure().get(slant) : 0;
    }

    private static int[] allowed(Task task, int[] wanted, boolean[] holds) {
        int[] allowed = wanted.clone();
        for (int kind = 0; kind < allowed.length; kind++) {
            Ends ends = task.kinds().get(kind).ends();
            allowed[kind] = ends.slanted() && !holds[ends.slant()] ? 0 : allowed[kind];
        }
        return allowed;
    }

    long value(long room) {
        return best(room).knapsack().value(room - best(room).lost());
    }

    int[] counts(long room) {
        return best(room).knapsack().counts(Math.max(0, room - best(room).lost()));
    }

    private CuttingPlan best(long room) {
        CuttingPlan best = choices.get(0);
        for (CuttingPlan choice : choices) {
            boolean more = choice.knapsack().value(room - choice.lost())
                    > best.knapsack().value(room - best.lost());
            best = more ? choice : best;
        }
        return best;
    }
}
