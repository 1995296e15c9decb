package boltlore.trades.coating;

import boltlore.catalogue.Oven;
import boltlore.measure.BinBound;
import boltlore.measure.BinBound.Sized;
import java.util.Comparator;
import java.util.List;

/**
 * A number of loads that cannot be gone below: the {@linkplain BinBound bound} of each limit alone; pieces whose sections
 * are too far apart to hang together add up.
 */
final class LeastLoads {

    private final LoadLimits limits;
    private final List<HungKind> thinFirst;

    private LeastLoads(List<BatchRow> rows, LoadLimits limits) {
        this.limits = limits;
        this.thinFirst = rows.stream()
                .map(HungKind::of)
                .sorted(Comparator.comparing(HungKind::slowestMm))
                .toList();
    }

    static int bound(List<BatchRow> rows, Oven oven) {
        return new LeastLoads(rows, LoadLimits.of(oven)).apart();
    }

    /** From thick to thin: the most that a first group and what cannot share a load with it come to. */
    private int apart() {
        int[] from = new int[thinFirst.size() + 1];
        for (int first = thinFirst.size() - 1; first >= 0; first--) {
            from[first] = from[first + 1];
            for (int last = first; last < thinFirst.size(); last++) {
                if (endsGroup(last)) {
                    from[first] = Math.max(from[first], all(thinFirst.subList(first, last + 1)) + from[beyond(last)]);
                }
            }
        }
        return from[0];
    }

    /** Whether the next kind is thicker, and the chain may break here at all. */
    private boolean endsGroup(int last) {
        boolean atEnd = last == thinFirst.size() - 1;
        return atEnd || (limits.sectionRatio() != null && thickerAfter(last));
    }

    private boolean thickerAfter(int last) {
        return thinFirst.get(last).slowestMm().compareTo(thinFirst.get(last + 1).slowestMm()) < 0;
    }

    /** The first kind that is too thick to hang with that one. */
    private int beyond(int last) {
        int next = last + 1;
        while (next < thinFirst.size()
                && limits.together(
                        thinFirst.get(last).slowestMm(), thinFirst.get(next).slowestMm())) {
            next++;
        }
        return next;
    }

    private int all(List<HungKind> kinds) {
        long least = 0;
        for (int i = 0; i < LoadUnits.KINDS; i++) {
            least = Math.max(least, byOneLimit(kinds, i));
        }
        return Math.toIntExact(least);
    }

    private long byOneLimit(List<HungKind> kinds, int limit) {
        List<Sized> sizes = kinds.stream()
                .map(kind -> new Sized(kind.size().at(limit), kind.pieces()))
                .toList();
        return BinBound.least(sizes, limits.most().at(limit));
    }
}
