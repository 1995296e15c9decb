package boltlore.trades.scheduling.finite;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.function.Predicate;

/**
 * When one station of a work centre is open, and how much standard work it gives: from the beginning of each working day so
 * many minutes by the clock. Times are minutes from midnight before the first day; what is given is counted in small parts of
 * a standard minute, so that nothing is rounded but the end of a job, up to the next minute. Before the first day every day
 * counts as a working day, so that latest dates of orders long overdue can be told.
 */
public final class OpenTime {

    /** Minutes. */
    public static final int DAY = 1440;

    /** Parts of a standard minute. */
    static final long PARTS = 10_000;

    private final LocalDate first;
    private final int minutes;
    private final long rate;
    private final Predicate<LocalDate> works;

    /** Working days from the first day on; grows as later days are asked for. */
    private int[] workingDays = new int[0];

    private int known;
    private int lookedAt;

    /**
     * A station.
     *
     * @param minutes by the clock, of a working day, 1 to 1,440
     * @param rate ten-thousandths of a standard minute that a minute by the clock gives, at least 1
     */
    public OpenTime(LocalDate first, int minutes, long rate, Predicate<LocalDate> works) {
        if (minutes < 1 || minutes > DAY || rate < 1) {
            throw new IllegalArgumentException("A day of " + minutes + " minutes at " + rate);
        }
        this.rate = rate;
        this.first = first;
        this.minutes = minutes;
        this.works = works;
    }

    /** Whole standard minutes that the station gives on a working day. */
    public int minutesPerDay() {
        return Math.toIntExact(minutes * rate / PARTS);
    }

    public boolean worksOn(int day) {
        return works.test(first.plusDays(day));
    }

    /** What the station gives from the first day until that time, in parts of standard minutes; below 0 before. */
    public long given(long time) {
        long day = Math.floorDiv(time, DAY);
        long minuteOfDay = Math.floorMod(time, DAY);
        long days = day < 0 ? day : workingDaysBefore(Math.toIntExact(day));
        boolean open = day < 0 || worksOn(Math.toIntExact(day));
        return (days * minutes + (open ? Math.min(minuteOfDay, minutes) : 0)) * rate;
    }

    /** The first time from that one on at which the station is open. */
    long opening(long time) {
        return startOf(given(time));
    }

    /** When work of so many standard minutes that is begun at that time, or at the next opening, is done. */
    long after(long time, long work) {
        return endOf(given(time) + work * PARTS);
    }

    /** The latest time at which work must be begun that is to be done by that time. */
    long before(long time, long work) {
        return startOf(given(time) - work * PARTS);
    }

    /** The latest time at which so much has been given: the beginning of what comes next. */
    private long startOf(long given) {
        long clock = Math.floorDiv(given, rate);
        return dayOf(Math.floorDiv(clock, minutes)) * DAY + Math.floorMod(clock, minutes);
    }

    /** The earliest time at which so much has been given. */
    private long endOf(long given) {
        long clock = -Math.floorDiv(-given, rate) - 1;
        return dayOf(Math.floorDiv(clock, minutes)) * DAY + Math.floorMod(clock, minutes) + 1;
    }

    /** The day with so many working days before it. */
    private long dayOf(long workingDaysBefore) {
        if (workingDaysBefore < 0) {
            return workingDaysBefore;
        }
        int wanted = Math.toIntExact(workingDaysBefore);
        while (known <= wanted) {
            look();
        }
        return workingDays[wanted];
    }

    private int workingDaysBefore(int day) {
        while (lookedAt <= day) {
            look();
        }
        int place = Arrays.binarySearch(workingDays, 0, known, day);
        return place < 0 ? -place - 1 : place;
    }

    /** @throws IllegalStateException where ten thousand years hold no such working day */
    private void look() {
        if (lookedAt > 3_652_425) {
            throw new IllegalStateException("No working day is left");
        }
        if (worksOn(lookedAt)) {
            if (known == workingDays.length) {
                workingDays = Arrays.copyOf(workingDays, Math.max(256, 2 * known));
            }
            workingDays[known] = lookedAt;
            known++;
        }
        lookedAt++;
    }
}
