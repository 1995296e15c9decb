package boltlore.trades.coating;

import boltlore.catalogue.Oven;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Hangs pieces into few loads by best-fit decreasing: the kind that needs most first, each piece into the load that it
 * leaves fullest. What 'most' is, is tried in several ways, and the fewest loads are kept. Same pieces, same loads.
 */
final class OvenLoads {

    private final LoadLimits limits;
    private final List<HangingLoad> loads = new ArrayList<>();

    private OvenLoads(LoadLimits limits) {
        this.limits = limits;
    }

    /** Loads with the earliest need first, without a number yet. Every piece must fit into the oven alone. */
    static List<OvenLoad> fill(List<BatchRow> rows, Oven oven) {
        LoadLimits limits = LoadLimits.of(oven);
        List<HungKind> kinds = rows.stream().map(HungKind::of).toList();
        return orders(limits).stream()
                .map(order -> hung(kinds.stream().sorted(order).toList(), limits))
                .min(Comparator.comparingInt(List::size))
                .orElse(List.of());
    }

    /** The planned loads with more pieces where they have room, and further loads, without a number yet, for the rest. */
    static List<OvenLoad> into(List<OvenLoad> planned, List<BatchRow> more, Oven oven) {
        LoadLimits limits = LoadLimits.of(oven);
        OvenLoads hanging = new OvenLoads(limits);
        planned.forEach(hanging::again);
        more.stream().map(HungKind::of).sorted(orders(limits).get(0)).forEach(hanging::hang);
        return hanging.loads.stream().map(HangingLoad::load).toList();
    }

    private static List<OvenLoad> hung(List<HungKind> largestFirst, LoadLimits limits) {
        OvenLoads hanging = new OvenLoads(limits);
        largestFirst.forEach(hanging::hang);
        return hanging.loads.stream()
                .map(HangingLoad::load)
                .sorted(Comparator.comparing(OvenLoad::needBy, BatchRow.EARLIEST))
                .toList();
    }

    /** By the largest share of a limit, by all shares, by the slowest section, and by each limit. */
    private static List<Comparator<HungKind>> orders(LoadLimits limits) {
        Comparator<HungKind> byLargest = Comparator.comparingDouble(kind -> -limits.fullness(kind.size()));
        Comparator<HungKind> byAll = Comparator.comparingDouble(kind -> -sum(kind, limits));
        Comparator<HungKind> bySection =
                Comparator.comparing(HungKind::slowestMm).reversed();
        List<Comparator<HungKind>> orders = new ArrayList<>(List.of(byLargest, byAll, bySection.thenComparing(byAll)));
        for (int i = 0; i < LoadUnits.KINDS; i++) {
            int one = i;
            orders.add(Comparator.<HungKind>comparingDouble(kind -> -limits.share(kind.size(), one))
                    .thenComparing(byAll));
        }
        return orders;
    }

    private static double sum(HungKind kind, LoadLimits limits) {
        double sum = 0;
        for (int i = 0; i < LoadUnits.KINDS; i++) {
            sum += limits.share(kind.size(), i);
        }
        return sum;
    }

    private void again(OvenLoad planned) {
        HangingLoad load = new HangingLoad(limits, planned.number());
        planned.rows().forEach(row -> load.hang(HungKind.of(row), row.marks()));
        loads.add(load);
    }

    /** Pieces of one kind fill the best load before they look for the next: what one leaves fullest, two do as well. */
    private void hang(HungKind kind) {
        List<PieceMarks> left = kind.row().marks();
        while (!left.isEmpty()) {
            HangingLoad load = best(kind).orElseGet(this::another);
            int taken = Math.min(load.room(kind), PieceMarks.count(left));
            load.hang(kind, PieceMarks.first(left, taken));
            left = PieceMarks.after(left, taken);
        }
    }

    private Optional<HangingLoad> best(HungKind kind) {
        HangingLoad best = null;
        double fullest = -1;
        for (HangingLoad load : loads) {
            double with = load.fullnessWith(kind);
            if (with > fullest && load.room(kind) > 0) {
                best = load;
                fullest = with;
            }
        }
        return Optional.ofNullable(best);
    }

    private HangingLoad another() {
        HangingLoad load = new HangingLoad(limits, 0);
        loads.add(load);
        return load;
    }
}
