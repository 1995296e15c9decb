package boltlore.trades.coating;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Workshop;
import boltlore.trades.KitInWork;
import boltlore.trades.StoppedOrder;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the coating shop is given to do.
 *
 * @param start first working day, or null where working days are only counted
 * @param late what a late order moves, or null where there is none
 * @param again the only pieces that the plan is of, where they are coated again
 * @param stopped orders that are not in the plan because something stops them
 */
public record CoatJob(
        CoatPlan plan,
        Workshop workshop,
        @Nullable LocalDate start,
        @Nullable LateMoves late,
        Again again,
        List<StoppedOrder> stopped) {

    public CoatJob {
        stopped = List.copyOf(stopped);
    }

    public static CoatJob of(CoatPlan plan, Catalogue catalogue) {
        return new CoatJob(plan, catalogue.workshop(), null, null, Again.NONE, List.of());
    }

    /**
     * The orders planned together; nothing where none is left, or not the late one.
     *
     * @param late name of the order that comes late, or null where there is none
     */
    public static Optional<CoatJob> of(List<KitInWork> kits, List<StoppedOrder> stopped, @Nullable String late) {
        return of(kits, late, null, Again.NONE).map(job -> job.without(stopped));
    }

    static Optional<CoatJob> of(List<KitInWork> kits, @Nullable String late, @Nullable LocalDate start, Again again) {
        List<Bill> planned = kits.stream()
                .map(KitInWork::bill)
                .filter(bill -> !bill.order().name().equals(late))
                .toList();
        if (planned.isEmpty() || (late != null && planned.size() == kits.size())) {
            return Optional.empty();
        }
        Catalogue catalogue = kits.get(0).catalogue();
        LateMoves moves = kits.stream()
                .map(KitInWork::bill)
                .filter(bill -> bill.order().name().equals(late))
                .findFirst()
                .map(bill -> LateMoves.of(planned, bill, catalogue))
                .orElse(null);
        CoatPlan plan = moves == null ? CoatPlanner.plan(planned, catalogue, again) : moves.after();
        return Optional.of(new CoatJob(plan, catalogue.workshop(), start, moves, again, List.of()));
    }

    CoatJob without(List<StoppedOrder> orders) {
        return new CoatJob(plan, workshop, start, late, again, orders);
    }

    CoatingShop shop() {
        return workshop.coating();
    }

    public Timetable timetable() {
        return Timetable.of(plan, shop());
    }

    public List<OrderThrough> through() {
        return OrderThrough.of(plan, timetable(), workshop.assemblyDays());
    }

    /** 'day 3', or the date where the first day is known, or empty where days are not known. */
    String day(int day) {
        if (day == 0) {
            return "";
        }
        return start == null ? "day " + day : WorkDays.date(start, day).toString();
    }
}
