package boltlore.trades.coating.sheets;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Workshop;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.LateMoves;
import boltlore.trades.coating.OrderThrough;
import boltlore.trades.coating.Timetable;
import boltlore.trades.coating.WorkDays;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the coating shop is given to do.
 *
 * @param start first working day, or null where working days are only counted
 * @param late what a late order moves, or null where there is none
 */
public record CoatJob(
        CoatPlan plan,
        Workshop workshop,
        @Nullable LocalDate start,
        @Nullable LateMoves late) {

    public static CoatJob of(CoatPlan plan, Catalogue catalogue) {
        return new CoatJob(plan, catalogue.workshop(), null, null);
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
