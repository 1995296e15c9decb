package boltlore.trades.costing.path;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Activities with what each waits for. Critical path method: forwards, an activity starts when the last of those before it
 * ends; backwards, it must end before the first of those after it must start; where both agree it is critical (J. E.
 * Kelley and M. R. Walker, Critical-path planning and scheduling, 1959; from memory).
 */
public final class Network<T> {

    private final Map<T, Activity<T>> activities = new LinkedHashMap<>();

    /**
     * @param all each waiting only for others among them, and none for itself in a circle
     * @throws IllegalArgumentException for an activity named twice, one that is missing, or a circle
     */
    public Network(List<Activity<T>> all) {
        List<Activity<T>> waiting = new ArrayList<>(all);
        boolean moved = true;
        while (moved) {
            moved = waiting.removeIf(this::takenInTurn);
        }
        if (!waiting.isEmpty()) {
            throw new IllegalArgumentException("These wait for one another, for what is missing, or stand twice: "
                    + waiting.stream().map(Activity::what).toList());
        }
    }

    private boolean takenInTurn(Activity<T> activity) {
        return activities.keySet().containsAll(activity.after())
                && activities.putIfAbsent(activity.what(), activity) == null;
    }

    /** When each may run, those before others first. */
    public Map<T, Slot<T>> schedule() {
        Map<T, Integer> earliest = earliestStarts();
        Map<T, Integer> latest = latestStarts(end(earliest));
        Map<T, Slot<T>> slots = new LinkedHashMap<>();
        activities.forEach((what, activity) ->
                slots.put(what, new Slot<>(activity, earliest.getOrDefault(what, 0), latest.getOrDefault(what, 0))));
        return slots;
    }

    private Map<T, Integer> latestStarts(int end) {
        List<Activity<T>> backwards = new ArrayList<>(activities.values());
        Collections.reverse(backwards);
        Map<T, Integer> finish = new LinkedHashMap<>();
        Map<T, Integer> starts = new LinkedHashMap<>();
        for (Activity<T> activity : backwards) {
            int start = finish.getOrDefault(activity.what(), end) - activity.days();
            starts.put(activity.what(), start);
            activity.after().forEach(before -> finish.merge(before, start, Math::min));
        }
        return starts;
    }

    /** Days until the last activity ends. */
    public int days() {
        return end(earliestStarts());
    }

    private Map<T, Integer> earliestStarts() {
        Map<T, Integer> starts = new LinkedHashMap<>();
        for (Activity<T> activity : activities.values()) {
            starts.put(
                    activity.what(),
                    activity.after().stream()
                            .mapToInt(before -> finish(starts, before))
                            .max()
                            .orElse(0));
        }
        return starts;
    }

    private int end(Map<T, Integer> starts) {
        return starts.keySet().stream()
                .mapToInt(what -> finish(starts, what))
                .max()
                .orElse(0);
    }

    private int finish(Map<T, Integer> starts, T what) {
        Activity<T> activity = activities.get(what);
        return activity == null ? 0 : starts.getOrDefault(what, 0) + activity.days();
    }
}
