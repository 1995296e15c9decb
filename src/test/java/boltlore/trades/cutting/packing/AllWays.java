package boltlore.trades.cutting.packing;

import java.util.ArrayList;
import java.util.List;

/** The least cost by trying every way to part the pieces among bars; for a handful of pieces. */
final class AllWays {

    private final Task task;
    private final List<Integer> pieces = new ArrayList<>();
    private final List<int[]> groups = new ArrayList<>();
    private long least = Long.MAX_VALUE;

    private AllWays(Task task) {
        this.task = task;
        for (int kind = 0; kind < task.kinds().size(); kind++) {
            for (int i = 0; i < task.kinds().get(kind).count(); i++) {
                pieces.add(kind);
            }
        }
    }

    static long leastCost(Task task) {
        AllWays ways = new AllWays(task);
        ways.part(0);
        return ways.least;
    }

    private void part(int piece) {
        if (piece == pieces.size()) {
            least = Math.min(least, cost(0, new boolean[task.stocks().size()]));
            return;
        }
        for (int i = 0; i <= groups.size(); i++) {
            boolean fresh = i == groups.size();
            if (fresh) {
                groups.add(new int[task.kinds().size()]);
            }
            groups.get(i)[pieces.get(piece)]++;
            part(piece + 1);
            groups.get(i)[pieces.get(piece)]--;
            if (fresh) {
                groups.remove(i);
            }
        }
    }

    /** Of the groups from that one on, each on a bar of its own. */
    private long cost(int group, boolean[] used) {
        if (group == groups.size()) {
            return 0;
        }
        long best = Long.MAX_VALUE / 2;
        for (int stock = 0; stock < used.length; stock++) {
            Stock bar = task.stocks().get(stock);
            if (!used[stock] && task.load(new CuttingPattern(stock, groups.get(group))) <= bar.room()) {
                used[stock] = !bar.isBought();
                best = Math.min(best, bar.cost() + cost(group + 1, used));
                used[stock] = false;
            }
        }
        return best;
    }
}
