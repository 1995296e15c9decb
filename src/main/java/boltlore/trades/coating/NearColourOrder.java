package boltlore.trades.coating;

import java.util.ArrayList;
import java.util.List;

/** A good order of many sprays: the cheapest next one that is ready, then single sprays moved while that costs less. */
final class NearColourOrder {

    private final List<Spray> sprays;
    private final BoothWays booths;

    NearColourOrder(List<Spray> sprays, BoothWays booths) {
        this.sprays = sprays;
        this.booths = booths;
    }

    List<Spray> found() {
        List<Spray> order = cheapestNext();
        List<Spray> better = moved(order);
        while (cost(better) < cost(order)) {
            order = better;
            better = moved(order);
        }
        return order;
    }

    private List<Spray> cheapestNext() {
        List<Spray> left = new ArrayList<>(sprays);
        List<Spray> order = new ArrayList<>();
        String last = booths.inBooth();
        while (!left.isEmpty()) {
            Spray next = cheapest(left, last);
            last = booths.after(last, next.powder());
            left.remove(next);
            order.add(next);
        }
        return order;
    }

    private Spray cheapest(List<Spray> left, String last) {
        Spray best = null;
        for (Spray spray : left) {
            boolean ready = left.stream().noneMatch(spray::follows);
            if (ready && (best == null || cost(last, spray) < cost(last, best))) {
                best = spray;
            }
        }
        return best == null ? left.get(0) : best;
    }

    /** The best order that comes from moving one spray, or the order itself. */
    private List<Spray> moved(List<Spray> order) {
        List<Spray> best = order;
        for (int from = 0; from < order.size(); from++) {
            for (int to = 0; to < order.size(); to++) {
                List<Spray> other = new ArrayList<>(order);
                other.add(to, other.remove(from));
                best = cost(other) < cost(best) && inTurn(other) ? other : best;
            }
        }
        return best;
    }

    private static boolean inTurn(List<Spray> order) {
        for (int i = 0; i < order.size(); i++) {
            if (order.subList(i, order.size()).stream().anyMatch(order.get(i)::follows)) {
                return false;
            }
        }
        return true;
    }

    private long cost(List<Spray> order) {
        return cost(order, booths);
    }

    /** What all change-overs cost in that order. */
    static long cost(List<Spray> order, BoothWays booths) {
        long sum = order.isEmpty() ? 0 : booths.first(order.get(0).powder());
        String last = booths.inBooth();
        for (int i = 0; i < order.size(); i++) {
            sum += i == 0 ? 0 : booths.cost(last, order.get(i).powder());
            last = booths.after(last, order.get(i).powder());
        }
        return sum;
    }

    private long cost(String last, Spray next) {
        return booths.cost(last, next.powder());
    }
}
