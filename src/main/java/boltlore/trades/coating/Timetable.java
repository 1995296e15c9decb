package boltlore.trades.coating;

import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Oven;
import java.util.HashMap;
import java.util.Map;

/**
 * On which working day each load is cured, day 1 being the first. Each oven takes its loads one after the other; a load
 * that does not fit into what is left of a day waits for the next; a change-over is counted in full before the load that
 * follows it, though part of it may run while the oven is busy.
 */
public final class Timetable {

    private static final class Clock {
        private int day = 1;
        private int used;

        private void work(int minutes, int dayMinutes) {
            if (used > 0 && used + minutes > dayMinutes) {
                day++;
                used = 0;
            }
            used += minutes;
            while (used > dayMinutes) {
                day++;
                used -= dayMinutes;
            }
        }
    }

    private final int dayMinutes;
    private final Map<Oven, Clock> clocks = new HashMap<>();
    private final Map<Integer, Integer> dayOfLoad = new HashMap<>();

    private Timetable(int dayMinutes) {
        this.dayMinutes = dayMinutes;
    }

    /** Without days where the shop does not say how long a day is. */
    public static Timetable of(CoatPlan plan, CoatingShop shop) {
        Timetable timetable = new Timetable(shop.time().dayMinutes());
        if (timetable.dayMinutes > 0) {
            Map<Integer, Integer> minutes = minutes(plan);
            plan.runs().stream()
                    .flatMap(run -> run.queues().stream())
                    .forEach(queue -> queue.loads()
                            .forEach(load -> timetable.cure(
                                    load.number(), queue.oven(), minutes.getOrDefault(load.number(), 0))));
        }
        return timetable;
    }

    /** Oven minutes of each load by its number, with the change-over before it. */
    public static Map<Integer, Integer> minutes(CoatPlan plan) {
        Map<Integer, Integer> minutes = new HashMap<>();
        int changeOver = 0;
        for (PowderRun run : plan.runs()) {
            changeOver += run.changeOver() == null ? 0 : run.changeOver().work().minutes();
            for (CureQueue queue : run.queues()) {
                for (OvenLoad load : queue.loads()) {
                    minutes.put(load.number(), queue.minutesOf(load) + changeOver);
                    changeOver = 0;
                }
            }
        }
        return minutes;
    }

    private void cure(int load, Oven oven, int minutes) {
        Clock clock = clocks.computeIfAbsent(oven, none -> new Clock());
        clock.work(minutes, dayMinutes);
        dayOfLoad.put(load, clock.day);
    }

    public boolean known() {
        return dayMinutes > 0;
    }

    /** The working day of that load, or 0 where days are not known. */
    public int day(int load) {
        return dayOfLoad.getOrDefault(load, 0);
    }

    /** The working day of the last load, or 0 where there is none. */
    public int days() {
        return dayOfLoad.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    }
}
