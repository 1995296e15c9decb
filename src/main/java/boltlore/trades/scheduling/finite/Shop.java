package boltlore.trades.scheduling.finite;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * The work centres, with the day from which days and minutes are counted.
 *
 * @param first long enough before all dates of orders
 */
public record Shop(LocalDate first, List<Centre> centres) {

    /**
     * Stations that take the same work, one job each at a time.
     *
     * @param open the same for all its stations
     */
    public record Centre(String name, int stations, OpenTime open) {}

    public Shop {
        centres = List.copyOf(centres);
    }

    public int day(LocalDate date) {
        return Math.toIntExact(ChronoUnit.DAYS.between(first, date));
    }

    public LocalDate date(int day) {
        return first.plusDays(day);
    }

    OpenTime open(int centre) {
        return centres.get(centre).open();
    }

    /** The day on which something ends at that time; midnight belongs to the day before it. */
    public static int endDay(long time) {
        return Math.toIntExact(Math.floorDiv(time - 1, OpenTime.DAY));
    }

    /** The day on which something begins at that time. */
    public static int startDay(long time) {
        return Math.toIntExact(Math.floorDiv(time, OpenTime.DAY));
    }

    /** The first minute after a day: what is there by its evening can be worked on from then on. */
    static long morningAfter(int day) {
        return (day + 1L) * OpenTime.DAY;
    }
}
