package boltlore.trades.coating;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.order.Order;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a late order moves.
 *
 * @param after the plan with it
 * @param loads that get more pieces or are new, in the order they are cured
 * @param orders the late one, and those that are through on another working day than before
 * @param loadsAfresh how many loads a plan made anew would have
 */
public record LateMoves(
        Order late, CoatPlan planned, CoatPlan after, List<LoadMove> loads, List<OrderMove> orders, int loadsAfresh) {

    /** A load that changes; before is null where it is new. */
    public record LoadMove(
            PowderRun run, CureQueue queue, @Nullable OvenLoad before, OvenLoad after) {

        public int morePieces() {
            return after.pieces() - (before == null ? 0 : before.pieces());
        }
    }

    /** An order whose day is touched; before is null for the late one. */
    public record OrderMove(@Nullable OrderThrough before, OrderThrough after) {}

    /** Puts the late order into the plan of the others. */
    public static LateMoves of(Collection<Bill> bills, Bill late, Catalogue catalogue) {
        CoatPlan planned = CoatPlanner.plan(bills, catalogue);
        CoatPlan after = LateOrder.in(planned, late, catalogue);
        List<Bill> all = new ArrayList<>(bills);
        all.add(late);
        int afresh = (int) CoatPlanner.plan(all, catalogue).loads().count();
        return new LateMoves(
                late.order(), planned, after, loads(planned, after), orders(planned, after, catalogue), afresh);
    }

    private static List<LoadMove> loads(CoatPlan planned, CoatPlan after) {
        Map<Integer, OvenLoad> before = new HashMap<>();
        planned.loads().forEach(load -> before.put(load.number(), load));
        return after.runs().stream()
                .flatMap(run -> run.queues().stream().flatMap(queue -> moves(run, queue, before)))
                .filter(move -> move.morePieces() > 0)
                .toList();
    }

    private static Stream<LoadMove> moves(PowderRun run, CureQueue queue, Map<Integer, OvenLoad> before) {
        return queue.loads().stream().map(load -> new LoadMove(run, queue, before.get(load.number()), load));
    }

    private static List<OrderMove> orders(CoatPlan planned, CoatPlan after, Catalogue catalogue) {
        Map<String, OrderThrough> before = new HashMap<>();
        through(planned, catalogue).forEach(order -> before.put(order.order().name(), order));
        return through(after, catalogue).stream()
                .map(order -> new OrderMove(before.get(order.order().name()), order))
                .filter(LateMoves::touched)
                .toList();
    }

    private static boolean touched(OrderMove move) {
        OrderThrough before = move.before();
        return before == null || before.day() != move.after().day();
    }

    private static List<OrderThrough> through(CoatPlan plan, Catalogue catalogue) {
        Timetable timetable = Timetable.of(plan, catalogue.workshop().coating());
        return OrderThrough.of(plan, timetable, catalogue.workshop().assemblyDays());
    }
}
