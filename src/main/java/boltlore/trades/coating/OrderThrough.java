package boltlore.trades.coating;

import boltlore.order.Order;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * When one order is through the own ovens.
 *
 * @param needBy day on which it needs its pieces in store, or null where it has no date
 * @param pieces of it in own oven loads, each once although it may have two coats
 * @param lastLoad number of the load that its last piece comes out of, or 0 where it has none
 * @param day working day of that load, or 0 where there is none or days are not known
 */
public record OrderThrough(Order order, int round, @Nullable LocalDate needBy, int pieces, int lastLoad, int day) {

    /** All orders of the plan, in its order. */
    public static List<OrderThrough> of(CoatPlan plan, Timetable timetable, int assemblyDays) {
        Map<String, Integer> lastLoad = lastLoads(plan);
        Map<String, Integer> day = days(plan, timetable);
        Map<String, Integer> pieces = pieces(plan);
        return plan.rounds().stream()
                .flatMap(round -> round.orders().stream()
                        .map(order -> new OrderThrough(
                                order,
                                round.number(),
                                CoatPlanner.needBy(order, assemblyDays),
                                pieces.getOrDefault(order.name(), 0),
                                lastLoad.getOrDefault(order.name(), 0),
                                day.getOrDefault(order.name(), 0))))
                .toList();
    }

    private static Map<String, Integer> lastLoads(CoatPlan plan) {
        Map<String, Integer> last = new HashMap<>();
        plan.loads().forEach(load -> marks(load.rows()).forEach(mark -> last.put(mark.order(), load.number())));
        return last;
    }

    private static Map<String, Integer> days(CoatPlan plan, Timetable timetable) {
        Map<String, Integer> day = new HashMap<>();
        plan.loads()
                .forEach(load -> marks(load.rows())
                        .forEach(mark -> day.merge(mark.order(), timetable.day(load.number()), Math::max)));
        return day;
    }

    private static Map<String, Integer> pieces(CoatPlan plan) {
        Map<String, Integer> pieces = new HashMap<>();
        plan.batches()
                .forEach(batch ->
                        marks(batch.rows()).forEach(mark -> pieces.merge(mark.order(), mark.pieces(), Integer::sum)));
        return pieces;
    }

    private static List<PieceMarks> marks(List<BatchRow> rows) {
        return rows.stream().flatMap(row -> row.marks().stream()).toList();
    }

    /** The date on which its last piece is coated, or null where days are not known. */
    public @Nullable LocalDate on(@Nullable LocalDate start) {
        return start == null || day == 0 ? null : WorkDays.date(start, day);
    }

    /** Whether that is after the day of need. */
    public boolean late(@Nullable LocalDate start) {
        LocalDate on = on(start);
        return on != null && needBy != null && on.isAfter(needBy);
    }
}
