package boltlore.trades.scheduling.finite;

import boltlore.trades.scheduling.finite.ShopOrder.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.PriorityQueue;

/**
 * A maximum lateness in calendar days that no schedule of the work can undercut. For a lateness that is tried, each work
 * centre is looked at alone: its work may begin when all before it is done with free stations everywhere, must end so early
 * that all after it can be done with free stations, may be interrupted, and is done by all stations at once. The rule of the
 * earliest deadline, with interruption, keeps all deadlines there if any rule does (J. R. Jackson, Scheduling a production
 * line to minimize maximum tardiness, 1955; with release times: J. Carlier, The one-machine sequencing problem, 1982; from
 * memory). Where some centre cannot keep them, no schedule can.
 */
public final class LatenessBound {

    /** Work at one centre, counted in what the centre as a whole has given. */
    private record Demand(long release, long deadline, long amount) {}

    private final Shop shop;
    private final List<ShopOrder> orders;

    private LatenessBound(Shop shop, List<ShopOrder> orders) {
        this.shop = shop;
        this.orders = orders;
    }

    /**
     * The bound; none where no order has a date.
     *
     * @param reached a maximum lateness that some schedule has, at which the search may stop
     */
    public static OptionalInt days(Shop shop, List<ShopOrder> all, int reached) {
        List<ShopOrder> orders = all.stream().filter(ShopOrder::dated).toList();
        return orders.isEmpty() ? OptionalInt.empty() : OptionalInt.of(new LatenessBound(shop, orders).least(reached));
    }

    private int least(int reached) {
        int low = orders.stream()
                .mapToInt(order -> Windows.of(order, shop).earliest() - order.due())
                .max()
                .orElse(reached);
        int high = Math.max(low, reached);
        while (low < high) {
            int tried = Math.floorDiv(low + high, 2);
            if (isPossible(tried)) {
                high = tried;
            } else {
                low = tried + 1;
            }
        }
        return low;
    }

    private boolean isPossible(int lateness) {
        List<List<Demand>> byCentre = new ArrayList<>();
        shop.centres().forEach(centre -> byCentre.add(new ArrayList<>()));
        for (ShopOrder order : orders) {
            ShopOrder later = order.due(order.due() + lateness, true);
            Windows windows = Windows.of(later, shop);
            for (int i = 0; i < later.steps().size(); i++) {
                Step step = later.steps().get(i);
                for (int k = 0; k < step.work().size(); k++) {
                    int centre = step.work().get(k).centre();
                    long stations = shop.centres().get(centre).stations();
                    OpenTime open = shop.open(centre);
                    byCentre.get(centre)
                            .add(new Demand(
                                    open.given(windows.begin(i, k)) * stations,
                                    open.given(windows.end(i, k)) * stations,
                                    step.work().get(k).minutes() * OpenTime.PARTS));
                }
            }
        }
        return byCentre.stream().allMatch(LatenessBound::keepsDeadlines);
    }

    /** Earliest deadline first, with interruption: whenever work is released, the earliest deadline goes on. */
    private static boolean keepsDeadlines(List<Demand> demands) {
        List<Demand> byRelease = demands.stream()
                .sorted(Comparator.comparingLong(Demand::release))
                .toList();
        PriorityQueue<Demand> waiting = new PriorityQueue<>(Comparator.comparingLong(Demand::deadline));
        long now = Long.MIN_VALUE;
        int next = 0;
        while (next < byRelease.size() || !waiting.isEmpty()) {
            if (waiting.isEmpty()) {
                now = Math.max(now, byRelease.get(next).release());
            }
            while (next < byRelease.size() && byRelease.get(next).release() <= now) {
                waiting.add(byRelease.get(next));
                next++;
            }
            Demand first = waiting.remove();
            long until = next < byRelease.size() ? byRelease.get(next).release() : Long.MAX_VALUE;
            if (until - now >= first.amount()) {
                now += first.amount();
                if (now > first.deadline()) {
                    return false;
                }
            } else {
                waiting.add(new Demand(first.release(), first.deadline(), first.amount() - (until - now)));
                now = until;
            }
        }
        return true;
    }
}
