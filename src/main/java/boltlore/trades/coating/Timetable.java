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
    private int changeOverMinutes;

    private Timetable(int dayMinutes) {
        this.dayMinutes = dayMinutes;
    }

    /** Without days where the shop does not say how long a day is. */
    public static Timetable of(CoatPlan plan, CoatingShop shop) {
        Timetable timetable = new Timetable(shop.time().dayMinutes());
        if (timetable.dayMinutes > 0) {
            plan.runs().forEach(timetable::run);
        }
        return timetable;
    }

    private void run(PowderRun run) {
        ChangeOver changeOver = run.changeOver();
        changeOverMinutes += changeOver == null ? 0 : changeOver.work().minutes();
        run.queues().forEach(queue -> queue.loads().forEach(load -> cure(load, queue)));
    }

    private void cure(OvenLoad load, CureQueue queue) {
        Clock clock = clocks.computeIfAbsent(queue.oven(), none -> new Clock());
        clock.work(queue.minutesOf(load) + changeOverMinutes, dayMinutes);
        changeOverMinutes = 0;
        dayOfLoad.put(load.number(), clock.day);
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
