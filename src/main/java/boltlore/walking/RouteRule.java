package boltlore.walking;

import boltlore.walking.Block.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Rules by which stores are walked, after R. W. Hall, Distance approximations for routing manual pickers in a warehouse, IIE
 * Transactions 25 (1993), and K. J. Roodbergen and R. de Koster, Routing methods for warehouses with multiple cross aisles,
 * International Journal of Production Research 39 (2001), for one block. All begin at that end of the block that is nearer.
 */
public enum RouteRule {
    /** Each aisle with a stop is walked through; an odd last one is left where it was entered. */
    S_SHAPE(Walker::through),
    /** Each aisle is entered and left at the front. */
    RETURN(Walker::inAndOut),
    /** The first and the last aisle are walked through; the halves of the others are entered from their own end. */
    MIDPOINT(walker -> walker.around((stops, length) -> {
        NavigableSet<Long> all = new TreeSet<>(stops);
        Long front = all.floor(length / 2);
        Long back = front == null ? all.first() : all.higher(front);
        return new Walker.Gap(front == null ? 0 : front, back == null ? length : back);
    })),
    /** The first and the last aisle are walked through; of each other one its largest gap is left out. */
    LARGEST_GAP(walker -> walker.around(Walker::largest)),
    /** Each aisle is walked through or left where it was entered, whichever makes the whole walk shorter. */
    COMBINED(Walker::eitherWay),
    /** No walk is shorter. */
    SHORTEST(walker -> new ShortestRoute(walker.block).corners());

    @SuppressWarnings("ImmutableEnumChecker") // a function that changes nothing
    private final Function<Walker, List<Point>> way;

    RouteRule(Function<Walker, List<Point>> way) {
        this.way = way;
    }

    /** The walk by this rule; without a stop nobody leaves the start. */
    public Route route(Block block) {
        if (block.stops().isEmpty()) {
            return new Route(block, List.of(block.start()));
        }
        boolean turned = block.nearerFromRight();
        Block seen = turned ? block.mirrored() : block;
        Route route = new Route(seen, way.apply(new Walker(seen)));
        return turned ? route.mirrored() : route;
    }

    /** Somebody on the way; each rule is one way of going on. */
    private static final class Walker {

        /** What is left out of an aisle: it is entered from the front as far as that, and from the back as far as this. */
        record Gap(long front, long back) {}

        interface Leaving {
            Gap of(SortedSet<Long> stops, long length);
        }

        private final Block block;
        private final List<Point> corners = new ArrayList<>();
        private long away;

        Walker(Block block) {
            this.block = block;
            corners.add(block.start());
        }

        private void to(long along, long to) {
            Point next = new Point(along, to);
            if (!next.equals(corners.get(corners.size() - 1))) {
                corners.add(next);
            }
            away = to;
        }

        private List<Point> home() {
            to(block.startMm(), 0);
            return corners;
        }

        private void pass(long along) {
            to(along, away);
            to(along, block.lengthMm() - away);
        }

        private void visit(long along, long farthest) {
            long entered = away;
            to(along, entered);
            to(along, farthest);
            to(along, entered);
        }

        List<Point> through() {
            block.stops().forEach((along, stops) -> {
                boolean oddLast = along.equals(block.stops().lastKey()) && away == 0;
                if (oddLast) {
                    visit(along, stops.last());
                } else {
                    pass(along);
                }
            });
            return home();
        }

        List<Point> inAndOut() {
            block.stops().forEach((along, stops) -> visit(along, stops.last()));
            return home();
        }

        List<Point> around(Leaving leaving) {
            if (block.stops().size() == 1) {
                return inAndOut();
            }
            Map<Long, Gap> between = new LinkedHashMap<>();
            block.stops().forEach((along, stops) -> between.put(along, leaving.of(stops, block.lengthMm())));
            between.remove(block.stops().firstKey());
            between.remove(block.stops().lastKey());
            pass(block.stops().firstKey());
            between.forEach((along, gap) -> {
                if (gap.back() < block.lengthMm()) {
                    visit(along, gap.back());
                }
            });
            pass(block.stops().lastKey());
            List<Long> backwards = new ArrayList<>(between.keySet());
            Collections.reverse(backwards);
            for (Long along : backwards) {
                long front = between.getOrDefault(along, new Gap(0, 0)).front();
                if (front > 0) {
                    visit(along, front);
                }
            }
            return home();
        }

        static Gap largest(SortedSet<Long> stops, long length) {
            Gap largest = new Gap(0, 0);
            long before = 0;
            Iterator<Long> all = stops.iterator();
            while (before < length) {
                long next = all.hasNext() ? all.next() : length;
                if (next - before > largest.back() - largest.front()) {
                    largest = new Gap(before, next);
                }
                before = next;
            }
            return largest;
        }

        /** A way so far that ends at one end of an aisle: through which aisles it went, and how long it is. */
        private record Sofar(long lengthMm, List<Boolean> passed) {

            Sofar then(long more, boolean passes) {
                List<Boolean> all = new ArrayList<>(passed);
                all.add(passes);
                return new Sofar(lengthMm + more, all);
            }

            static Sofar shorter(Sofar one, Sofar other) {
                return other.lengthMm() < one.lengthMm() ? other : one;
            }
        }

        List<Point> eitherWay() {
            long length = block.lengthMm();
            Sofar front = new Sofar(0, List.of());
            Sofar back = new Sofar(Long.MAX_VALUE / 2, List.of());
            for (SortedSet<Long> stops : block.stops().values()) {
                Sofar infront = Sofar.shorter(front.then(2 * stops.last(), false), back.then(length, true));
                back = Sofar.shorter(back.then(2 * (length - stops.first()), false), front.then(length, true));
                front = infront;
            }
            Iterator<Boolean> passes = front.passed().iterator();
            block.stops().forEach((along, stops) -> {
                if (passes.next()) {
                    pass(along);
                } else {
                    visit(along, away == 0 ? stops.last() : stops.first());
                }
            });
            return home();
        }
    }
}
