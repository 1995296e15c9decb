package boltlore.walking;

import boltlore.walking.Block.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A round walk from the start and back to it.
 *
 * @param corners where it turns or begins to go on elsewhere, the start first and last; from each to the next it goes straight
 *     on, along an aisle or a cross aisle
 */
public record Route(Block block, List<Point> corners) {

    public Route {
        corners = List.copyOf(corners);
    }

    /** From stop to stop in the given order, each time by the nearer end of the aisles. */
    public static Route inOrder(Block block, List<Point> stops) {
        List<Point> corners = new ArrayList<>(List.of(block.start()));
        List<Point> all = new ArrayList<>(stops);
        all.add(block.start());
        for (Point next : all) {
            Point here = corners.get(corners.size() - 1);
            if (here.alongMm() != next.alongMm()) {
                long byFront = here.awayMm() + next.awayMm();
                long end = byFront <= 2 * block.lengthMm() - byFront ? 0 : block.lengthMm();
                corners.add(new Point(here.alongMm(), end));
                corners.add(new Point(next.alongMm(), end));
            }
            corners.add(next);
        }
        return new Route(block, corners);
    }

    public long lengthMm() {
        long sum = 0;
        for (int i = 1; i < corners.size(); i++) {
            Point from = corners.get(i - 1);
            Point to = corners.get(i);
            sum += Math.abs(to.alongMm() - from.alongMm()) + Math.abs(to.awayMm() - from.awayMm());
        }
        return sum;
    }

    /** The stops in the order in which the walk comes by them first. */
    public List<Point> stops() {
        Set<Point> seen = new LinkedHashSet<>();
        for (int i = 0; i < corners.size(); i++) {
            Point from = corners.get(Math.max(0, i - 1));
            Point to = corners.get(i);
            seen.addAll(from.alongMm() == to.alongMm() ? inside(from, to) : along(from, to));
        }
        return List.copyOf(seen);
    }

    /** Stops in one aisle, from one place in it to another. */
    private List<Point> inside(Point from, Point to) {
        SortedSet<Long> all = block.stops().getOrDefault(to.alongMm(), new TreeSet<>());
        List<Point> passed = new ArrayList<>();
        all.subSet(Math.min(from.awayMm(), to.awayMm()), Math.max(from.awayMm(), to.awayMm()) + 1)
                .forEach(away -> passed.add(new Point(to.alongMm(), away)));
        return turned(passed, from.awayMm() > to.awayMm());
    }

    /** Stops at the ends of aisles, which a cross aisle goes by. */
    private List<Point> along(Point from, Point to) {
        List<Point> passed = new ArrayList<>();
        block.stops()
                .subMap(Math.min(from.alongMm(), to.alongMm()), Math.max(from.alongMm(), to.alongMm()) + 1)
                .forEach((along, all) -> {
                    if (all.contains(to.awayMm())) {
                        passed.add(new Point(along, to.awayMm()));
                    }
                });
        return turned(passed, from.alongMm() > to.alongMm());
    }

    private static List<Point> turned(List<Point> passed, boolean backwards) {
        if (backwards) {
            Collections.reverse(passed);
        }
        return passed;
    }

    /** The same walk of the mirrored block. */
    Route mirrored() {
        return new Route(
                block.mirrored(),
                corners.stream()
                        .map(each -> new Point(-each.alongMm(), each.awayMm()))
                        .toList());
    }
}
