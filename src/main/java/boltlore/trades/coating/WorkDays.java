package boltlore.trades.coating;

import java.time.DayOfWeek;
import java.time.LocalDate;

/** Working days from Monday to Friday; holidays are not known. */
public final class WorkDays {

    private WorkDays() {}

    /** The date of that working day, 1 being the first working day from the start on. */
    public static LocalDate date(LocalDate start, int day) {
        LocalDate date = start;
        int left = day;
        while (true) {
            left -= works(date) ? 1 : 0;
            if (left <= 0 && works(date)) {
                return date;
            }
            date = date.plusDays(1);
        }
    }

    /** That day, or the last working day before it. */
    static LocalDate onOrBefore(LocalDate day) {
        LocalDate date = day;
        while (!works(date)) {
            date = date.minusDays(1);
        }
        return date;
    }

    private static boolean works(LocalDate date) {
        return date.getDayOfWeek() != DayOfWeek.SATURDAY && date.getDayOfWeek() != DayOfWeek.SUNDAY;
    }
}
