package boltlore.trades.scheduling.finite;

import boltlore.trades.scheduling.finite.ShopOrder.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Which station does what when. Filled by {@link FiniteLoading}, read by everyone else. */
public final class FiniteSchedule {

    /**
     * Work that has its place.
     *
     * @param work its place among the work of its step
     * @param ready time since which it could have been done
     * @param before what the station did before, or null
     */
    public record Placed(
            int order,
            int step,
            int work,
            int centre,
            int station,
            long ready,
            long start,
            long end,
            @Nullable Placed before) {}

    /** Why a part of the time between an order's beginning and its end passes. */
    public enum Why {
        /** The days of the step itself. */
        DAYS,
        /** A station works on it. */
        WORK,
        /** All stations of the centre work on something else. */
        WAIT
    }

    /**
     * A link of the chain that sets the day on which an order is finished.
     *
     * @param centre where it is worked on or waits; −1 where its own days pass
     * @param from day on whose evening the link begins
     * @param to day on whose evening it ends
     */
    public record Link(int step, Why why, int centre, int from, int to) {
        public int days() {
            return to - from;
        }
    }

    private final Shop shop;
    private final List<ShopOrder> orders;
    private final List<Windows> windows;
    private final List<int[]> start;
    private final List<int[]> finish;
    private final List<List<List<Placed>>> placed = new ArrayList<>();
    private final List<Placed> all = new ArrayList<>();

    FiniteSchedule(Shop shop, List<ShopOrder> orders, List<Windows> windows) {
        this.shop = shop;
        this.orders = List.copyOf(orders);
        this.windows = List.copyOf(windows);
        this.start = orders.stream().map(order -> new int[order.steps().size()]).toList();
        this.finish =
                orders.stream().map(order -> new int[order.steps().size()]).toList();
        for (ShopOrder order : orders) {
            List<List<Placed>> ofOrder = new ArrayList<>();
            order.steps().forEach(step -> ofOrder.add(new ArrayList<>()));
            placed.add(ofOrder);
        }
    }

    void begun(int order, int place, Step step) {
        start.get(order)[place] =
                step.after().stream().mapToInt(before -> finish(order, before)).reduce(step.release(), Math::max);
    }

    void placed(Placed work) {
        placed.get(work.order()).get(work.step()).add(work);
        all.add(work);
    }

    void finished(int order, int place) {
        int end = start(order, place) + orders.get(order).steps().get(place).days();
        for (Placed work : placed.get(order).get(place)) {
            end = Math.max(end, Shop.endDay(work.end()));
        }
        finish.get(order)[place] = end;
    }

    public Shop shop() {
        return shop;
    }

    public List<ShopOrder> orders() {
        return orders;
    }

    public Windows windows(int order) {
        return windows.get(order);
    }

    /** In the order in which it is begun. */
    public List<Placed> all() {
        return List.copyOf(all);
    }

    public List<Placed> placed(int order, int step) {
        return placed.get(order).get(step);
    }

    /** Standard minutes that the stations of the centre give to work, by day, rounded down. */
    public SortedMap<Integer, Long> minutesByDay(int centre) {
        OpenTime open = shop.open(centre);
        SortedMap<Integer, Long> minutes = new TreeMap<>();
        for (Placed work : all) {
            for (int day = Shop.startDay(work.start());
                    work.centre() == centre && day <= Shop.endDay(work.end());
                    day++) {
                long from = Math.max(work.start(), (long) day * OpenTime.DAY);
                long worked = open.given(Math.min(work.end(), Shop.morningAfter(day))) - open.given(from);
                if (worked > 0) {
                    minutes.merge(day, worked, Long::sum);
                }
            }
        }
        minutes.replaceAll((day, parts) -> parts / OpenTime.PARTS);
        return minutes;
    }

    /** Day on whose evening the step begins. */
    public int start(int order, int step) {
        return start.get(order)[step];
    }

    /** Day on whose evening the step is finished. */
    public int finish(int order, int step) {
        return finish.get(order)[step];
    }

    /** Day on which the order is finished. */
    public int finish(int order) {
        return IntStream.of(finish.get(order)).max().orElse(0);
    }

    /** Calendar days by which the order is finished after its due date; below 0 where it is early. */
    public int lateness(int order) {
        return finish(order) - orders.get(order).due();
    }

    /** The largest lateness of an order that has a date; none where no order has one. */
    public OptionalInt maxLateness() {
        return IntStream.range(0, orders.size())
                .filter(order -> orders.get(order).dated())
                .map(this::lateness)
                .max();
    }

    /** Walked back from the end of the order to its beginning: what each day of it passes with. */
    public List<Link> chain(int order) {
        List<Link> chain = new ArrayList<>();
        int step = IntStream.range(0, orders.get(order).steps().size())
                .filter(place -> finish(order, place) == finish(order))
                .reduce(-1, (one, other) -> other);
        while (step >= 0) {
            links(order, step, chain);
            step = binding(order, step);
        }
        return List.copyOf(chain);
    }

    /** The step that is finished last of those before it; −1 where its release binds. */
    private int binding(int order, int step) {
        return orders.get(order).steps().get(step).after().stream()
                .filter(before -> finish(order, before) == start(order, step))
                .findFirst()
                .orElse(-1);
    }

    private void links(int order, int step, List<Link> chain) {
        int to = finish(order, step);
        int from = start(order, step);
        if (from + orders.get(order).steps().get(step).days() >= to) {
            add(chain, new Link(step, Why.DAYS, -1, from, to));
            return;
        }
        List<Placed> works = placed(order, step);
        for (int k = works.size() - 1; k >= 0; k--) {
            Placed work = works.get(k);
            int ready = k == 0 ? from : Math.max(from, Shop.endDay(work.ready()));
            int began = Math.max(from, Shop.startDay(work.start()) - 1);
            boolean waited = work.start() > shop.open(work.centre()).opening(work.ready());
            // Days on which nobody works pass with the work that they lie before.
            int since = waited ? began : Math.min(ready, began);
            add(chain, new Link(step, Why.WORK, work.centre(), since, to));
            to = since;
            if (ready < to) {
                add(chain, new Link(step, Why.WAIT, work.centre(), ready, to));
                to = ready;
            }
        }
    }

    private static void add(List<Link> chain, Link link) {
        if (link.days() > 0) {
            chain.add(0, link);
        }
    }
}
