package boltlore.walking;

import boltlore.walking.Block.Point;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The shortest round walk of one block, exactly: H. D. Ratliff and A. S. Rosenthal, Order-picking in a rectangular warehouse: a
 * solvable case of the traveling salesman problem, Operations Research 31 (1983) 507–521. Aisle by aisle it keeps, for each way
 * in which what was walked so far can be completed, the shortest; the work grows with the number of aisles alone.
 */
final class ShortestRoute {

    /** How often an end of an aisle is come by: not yet, an odd or an even number of times. */
    private enum Times {
        NEVER,
        ODD,
        EVEN;

        Times plus(int more) {
            if (more == 0) {
                return this;
            }
            boolean odd = (this == ODD) == (more % 2 == 0);
            return odd ? ODD : EVEN;
        }
    }

    /**
     * What alone decides how a walk so far can be completed.
     *
     * @param joined whether back and front hang together, where both are come by
     */
    private record State(Times back, Times front, boolean joined) {

        private static final State NOTHING = new State(Times.NEVER, Times.NEVER, false);

        boolean apart() {
            return back != Times.NEVER && front != Times.NEVER && !joined;
        }
    }

    /** Pieces of the way in a row, each walked so often; what they hang on before. */
    private record Walked(
            long lengthMm, List<Piece> pieces, @Nullable Walked before) {

        Walked with(List<Piece> more) {
            long sum = more.stream().mapToLong(Piece::walkedMm).sum();
            return new Walked(lengthMm + sum, more, this);
        }
    }

    private record Piece(Point from, Point to, int times) {

        long walkedMm() {
            return times * (Math.abs(to.alongMm() - from.alongMm()) + Math.abs(to.awayMm() - from.awayMm()));
        }
    }

    private final Block block;
    private final SortedMap<Long, SortedSet<Long>> aisles;

    ShortestRoute(Block block) {
        this.block = block;
        this.aisles = new TreeMap<>(block.stops());
        this.aisles.putIfAbsent(block.startMm(), new TreeSet<>());
    }

    List<Point> corners() {
        Map<State, Walked> best = Map.of(State.NOTHING, new Walked(0, List.of(), null));
        Long before = null;
        for (Long along : aisles.keySet()) {
            if (before != null) {
                best = across(best, before, along);
            }
            best = inside(best, along);
            before = along;
        }
        Walked shortest = best.entrySet().stream()
                .filter(each -> each.getKey().back() != Times.ODD
                        && each.getKey().front() != Times.ODD
                        && !each.getKey().apart())
                .filter(each -> !aisles.lastKey().equals(block.startMm())
                        || each.getKey().front() != Times.NEVER)
                .map(Map.Entry::getValue)
                .min((one, other) -> Long.compare(one.lengthMm(), other.lengthMm()))
                .orElseThrow();
        return walk(shortest);
    }

    /** Along the cross aisles to the next aisle; what is left behind must hang together with what comes. */
    private Map<State, Walked> across(Map<State, Walked> best, long from, long to) {
        Map<State, Walked> next = new LinkedHashMap<>();
        int[][] ways = {{1, 1}, {2, 0}, {0, 2}, {2, 2}};
        best.forEach((state, walked) -> {
            for (int[] way : ways) {
                if (goesOn(state, way[0], way[1], from)) {
                    List<Piece> pieces = new ArrayList<>();
                    add(pieces, new Point(from, block.lengthMm()), new Point(to, block.lengthMm()), way[0]);
                    add(pieces, new Point(from, 0), new Point(to, 0), way[1]);
                    boolean joined = way[0] > 0 && way[1] > 0 && state.joined();
                    keep(
                            next,
                            new State(Times.NEVER.plus(way[0]), Times.NEVER.plus(way[1]), joined),
                            walked.with(pieces));
                }
            }
        });
        return next;
    }

    private boolean goesOn(State state, int back, int front, long from) {
        boolean evenly = state.back().plus(back) != Times.ODD && state.front().plus(front) != Times.ODD;
        boolean backGoesOn = back > 0 || state.back() == Times.NEVER || (state.joined() && front > 0);
        boolean frontGoesOn = front > 0 || state.front() == Times.NEVER || (state.joined() && back > 0);
        boolean started = from != block.startMm() || state.front() != Times.NEVER || front > 0;
        return evenly && backGoesOn && frontGoesOn && started;
    }

    /** The ways of fetching all of one aisle; where there is nothing to fetch it is no shorter to walk through than elsewhere. */
    private Map<State, Walked> inside(Map<State, Walked> best, long along) {
        SortedSet<Long> stops = aisles.getOrDefault(along, new TreeSet<>());
        Map<State, Walked> next = new LinkedHashMap<>();
        best.forEach((state, walked) -> {
            fromEnds(stops, along).forEach(pieces -> {
                int back = touches(pieces, block.lengthMm());
                int front = touches(pieces, 0);
                keep(next, ended(state, back, front, state.joined()), walked.with(pieces));
            });
            for (int times = 1; times <= 2 && !stops.isEmpty(); times++) {
                List<Piece> through =
                        List.of(new Piece(new Point(along, 0), new Point(along, block.lengthMm()), times));
                keep(next, ended(state, times, times, true), walked.with(through));
            }
        });
        return next;
    }

    /** A gap is left out between neighbouring stops or an end: the aisle is entered from its ends and left there again. */
    private List<List<Piece>> fromEnds(SortedSet<Long> stops, long along) {
        if (stops.isEmpty()) {
            return List.of(List.of());
        }
        List<List<Piece>> ways = new ArrayList<>();
        List<Long> marks = new ArrayList<>(stops);
        marks.add(0, 0L);
        marks.add(block.lengthMm());
        for (int i = 1; i < marks.size(); i++) {
            List<Piece> pieces = new ArrayList<>();
            if (i > 1) {
                pieces.add(new Piece(new Point(along, 0), new Point(along, marks.get(i - 1)), 2));
            }
            if (i < marks.size() - 1) {
                pieces.add(new Piece(new Point(along, block.lengthMm()), new Point(along, marks.get(i)), 2));
            }
            ways.add(pieces);
        }
        return ways;
    }

    private static int touches(List<Piece> pieces, long end) {
        return pieces.stream().anyMatch(piece -> piece.from().awayMm() == end) ? 2 : 0;
    }

    private static State ended(State state, int back, int front, boolean joined) {
        return new State(state.back().plus(back), state.front().plus(front), joined);
    }

    private static void add(List<Piece> pieces, Point from, Point to, int times) {
        if (times > 0) {
            pieces.add(new Piece(from, to, times));
        }
    }

    private static void keep(Map<State, Walked> best, State state, Walked walked) {
        best.merge(state, walked, (one, other) -> other.lengthMm() < one.lengthMm() ? other : one);
    }

    /** Each piece as often as it is to be walked, in one round: every place is come by an even number of times (Hierholzer). */
    private List<Point> walk(Walked shortest) {
        Map<Point, Deque<Point>> open = new HashMap<>();
        for (Walked part = shortest; part != null; part = part.before()) {
            part.pieces().forEach(piece -> {
                for (int i = 0; i < piece.times() && piece.walkedMm() > 0; i++) {
                    open.computeIfAbsent(piece.from(), any -> new ArrayDeque<>())
                            .add(piece.to());
                    open.computeIfAbsent(piece.to(), any -> new ArrayDeque<>()).add(piece.from());
                }
            });
        }
        Deque<Point> path = new ArrayDeque<>(List.of(block.start()));
        List<Point> round = new ArrayList<>();
        while (!path.isEmpty()) {
            Point here = path.element();
            Deque<Point> on = open.getOrDefault(here, new ArrayDeque<>());
            if (on.isEmpty()) {
                round.add(path.remove());
            } else {
                Point next = on.remove();
                open.getOrDefault(next, new ArrayDeque<>()).removeFirstOccurrence(here);
                path.push(next);
            }
        }
        Collections.reverse(round);
        return round;
    }
}
