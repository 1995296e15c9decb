package boltlore.trades.coating;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Pieces of one part in one order, numbered through the order from 1, both ends included.
 *
 * @param needBy day on which the order needs them in store, or null where the order has no date
 */
public record PieceMarks(String order, @Nullable LocalDate needBy, int from, int to) {

    public int pieces() {
        return to - from + 1;
    }

    /** As it is written on the tag: 'BL-1001 1–4', 'BL-1001 3'. */
    public String written() {
        return order + " " + from + (from == to ? "" : "–" + to);
    }

    /** Each piece by itself: 'BL-1001 3'. */
    Stream<String> each() {
        return IntStream.rangeClosed(from, to).mapToObj(number -> order + " " + number);
    }

    /** Each piece as marks of its own. */
    Stream<PieceMarks> apart() {
        return IntStream.rangeClosed(from, to).mapToObj(number -> new PieceMarks(order, needBy, number, number));
    }

    static int count(List<PieceMarks> marks) {
        return marks.stream().mapToInt(PieceMarks::pieces).sum();
    }

    /** The marks of the first so many pieces. */
    static List<PieceMarks> first(List<PieceMarks> marks, int pieces) {
        List<PieceMarks> first = new ArrayList<>();
        int left = pieces;
        for (PieceMarks next : marks) {
            int taken = Math.min(left, next.pieces());
            if (taken > 0) {
                first.add(new PieceMarks(next.order(), next.needBy(), next.from(), next.from() + taken - 1));
            }
            left -= taken;
        }
        return first;
    }

    /** The marks without the first so many pieces. */
    static List<PieceMarks> after(List<PieceMarks> marks, int pieces) {
        List<PieceMarks> after = new ArrayList<>();
        int left = pieces;
        for (PieceMarks next : marks) {
            int without = Math.min(left, next.pieces());
            if (without < next.pieces()) {
                after.add(new PieceMarks(next.order(), next.needBy(), next.from() + without, next.to()));
            }
            left -= without;
        }
        return after;
    }

    /** Joins marks that follow on each other; those of one order must stand together. */
    static List<PieceMarks> joined(List<PieceMarks> marks) {
        List<PieceMarks> joined = new ArrayList<>();
        for (PieceMarks next : marks) {
            PieceMarks last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && last.order().equals(next.order()) && last.to() + 1 == next.from()) {
                joined.set(joined.size() - 1, new PieceMarks(next.order(), next.needBy(), last.from(), next.to()));
            } else {
                joined.add(next);
            }
        }
        return List.copyOf(joined);
    }
}
