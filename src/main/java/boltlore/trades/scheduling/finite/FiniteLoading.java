package boltlore.trades.scheduling.finite;

import boltlore.trades.scheduling.finite.DispatchRule.Waiting;
import boltlore.trades.scheduling.finite.FiniteSchedule.Placed;
import boltlore.trades.scheduling.finite.ShopOrder.Step;
import boltlore.trades.scheduling.finite.ShopOrder.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Sets work forward in time onto stations that take one job at a time: whenever a station is free and open, it takes of the
 * jobs that wait the one that the rule ranks first, and no station stands idle while a job waits (dispatching, a non-delay
 * schedule: K. R. Baker, Introduction to Sequencing and Scheduling, 1974; from memory). Such a schedule can be kept, but need
 * not be the best.
 */
public final class FiniteLoading {

    /**
     * Something that happens.
     *
     * @param ready work that joins those that wait, or null
     * @param done work whose end frees its station, or null
     */
    private record Event(
            long time,
            int number,
            int centre,
            @Nullable Waiting ready,
            @Nullable Placed done) {}

    private final Shop shop;
    private final List<ShopOrder> orders;
    private final List<Windows> windows;
    private final List<PriorityQueue<Waiting>> queues = new ArrayList<>();
    private final List<TreeSet<Integer>> free = new ArrayList<>();
    private final PriorityQueue<Event> events =
            new PriorityQueue<>(Comparator.comparingLong(Event::time).thenComparingInt(Event::number));
    private final @Nullable Placed[][] last;
    private final FiniteSchedule schedule;
    private final List<int[]> waitsFor = new ArrayList<>();
    private final List<List<List<Integer>>> next = new ArrayList<>();
    private int number;

    private FiniteLoading(Shop shop, List<ShopOrder> orders, List<Windows> windows, Comparator<Waiting> rule) {
        this.shop = shop;
        this.orders = orders;
        this.windows = windows;
        this.schedule = new FiniteSchedule(shop, orders, windows);
        this.last = new Placed[shop.centres().size()][];
        for (int c = 0; c < shop.centres().size(); c++) {
            queues.add(new PriorityQueue<>(rule));
            TreeSet<Integer> stations = new TreeSet<>();
            for (int s = 0; s < shop.centres().get(c).stations(); s++) {
                stations.add(s);
            }
            free.add(stations);
            last[c] = new Placed[stations.size()];
        }
    }

    /** All work of these orders by that rule; the same every time. */
    public static FiniteSchedule schedule(Shop shop, List<ShopOrder> orders, DispatchRule rule) {
        List<Windows> windows =
                orders.stream().map(order -> Windows.of(order, shop)).toList();
        return schedule(shop, orders, windows, rule.order());
    }

    static FiniteSchedule schedule(Shop shop, List<ShopOrder> orders, List<Windows> windows, Comparator<Waiting> rule) {
        FiniteLoading loading = new FiniteLoading(shop, orders, windows, rule);
        loading.prepare();
        loading.run();
        return loading.schedule;
    }

    private void prepare() {
        for (ShopOrder order : orders) {
            List<List<Integer>> followers = new ArrayList<>();
            int[] before = new int[order.steps().size()];
            for (int i = 0; i < before.length; i++) {
                followers.add(new ArrayList<>());
                Step step = order.steps().get(i);
                before[i] = step.after().size();
                for (int earlier : step.after()) {
                    followers.get(earlier).add(i);
                }
            }
            next.add(followers);
            waitsFor.add(before);
        }
        for (int o = 0; o < orders.size(); o++) {
            for (int i = 0; i < orders.get(o).steps().size(); i++) {
                if (orders.get(o).steps().get(i).after().isEmpty()) {
                    begin(o, i);
                }
            }
        }
    }

    private void begin(int order, int place) {
        Step step = orders.get(order).steps().get(place);
        schedule.begun(order, place, step);
        if (step.work().isEmpty()) {
            finished(order, place);
        } else {
            ready(order, place, 0, Shop.morningAfter(schedule.start(order, place)));
        }
    }

    private void ready(int order, int place, int which, long time) {
        ShopOrder of = orders.get(order);
        Work work = of.steps().get(place).work().get(which);
        long latest = windows.get(order).latestBegin(place, which);
        Waiting waiting = new Waiting(order, place, which, of.due(), time, latest, work.minutes());
        happens(time, work.centre(), waiting, null);
    }

    private void happens(long time, int centre, @Nullable Waiting ready, @Nullable Placed done) {
        events.add(new Event(time, number, centre, ready, done));
        number++;
    }

    private void finished(int order, int place) {
        schedule.finished(order, place);
        for (int follower : next.get(order).get(place)) {
            waitsFor.get(order)[follower]--;
            if (waitsFor.get(order)[follower] == 0) {
                begin(order, follower);
            }
        }
    }

    private void run() {
        while (!events.isEmpty()) {
            long now = events.element().time();
            TreeSet<Integer> touched = new TreeSet<>();
            while (!events.isEmpty() && events.element().time() == now) {
                Event event = events.remove();
                touched.add(event.centre());
                take(event);
            }
            touched.forEach(centre -> dispatch(centre, now));
        }
    }

    private void take(Event event) {
        if (event.ready() != null) {
            queues.get(event.centre()).add(event.ready());
        }
        if (event.done() != null) {
            Placed done = event.done();
            free.get(event.centre()).add(done.station());
            int following = done.work() + 1;
            if (following
                    < orders.get(done.order()).steps().get(done.step()).work().size()) {
                ready(done.order(), done.step(), following, done.end());
            } else {
                finished(done.order(), done.step());
            }
        }
    }

    private void dispatch(int centre, long now) {
        PriorityQueue<Waiting> queue = queues.get(centre);
        if (queue.isEmpty() || free.get(centre).isEmpty()) {
            return;
        }
        long opening = shop.open(centre).opening(now);
        if (opening > now) {
            // Whatever comes until the doors open has the same right to be first.
            happens(opening, centre, null, null);
            return;
        }
        while (!queue.isEmpty() && !free.get(centre).isEmpty()) {
            Waiting waiting = queue.remove();
            int station = free.get(centre).pollFirst();
            long end = shop.open(centre).after(now, waiting.minutes());
            Placed placed = new Placed(
                    waiting.order(),
                    waiting.step(),
                    waiting.work(),
                    centre,
                    station,
                    waiting.ready(),
                    now,
                    end,
                    last[centre][station]);
            last[centre][station] = placed;
            schedule.placed(placed);
            happens(end, centre, null, placed);
        }
    }
}
