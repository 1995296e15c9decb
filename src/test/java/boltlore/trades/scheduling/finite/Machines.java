package boltlore.trades.scheduling.finite;

import boltlore.trades.scheduling.finite.DispatchRule.Waiting;
import boltlore.trades.scheduling.finite.ShopOrder.Step;
import boltlore.trades.scheduling.finite.ShopOrder.Work;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Shops and jobs as the literature writes them: every machine runs day and night, and a unit of time is a day. */
final class Machines {

    static final int UNIT = OpenTime.DAY;
    static final LocalDate FIRST = LocalDate.of(2026, 1, 5);

    private final Shop shop;
    private final List<ShopOrder> orders = new ArrayList<>();

    private Machines(int count, int stations, Predicate<LocalDate> works) {
        this.shop = new Shop(
                FIRST,
                IntStream.range(0, count)
                        .mapToObj(machine -> new Shop.Centre(
                                "machine " + machine,
                                stations,
                                new OpenTime(FIRST, OpenTime.DAY, OpenTime.PARTS, works)))
                        .toList());
    }

    static Machines of(int count) {
        return new Machines(count, 1, day -> true);
    }

    static Machines of(int count, int stations) {
        return new Machines(count, stations, day -> true);
    }

    static Machines open(int count, Predicate<LocalDate> works) {
        return new Machines(count, 1, works);
    }

    Shop shop() {
        return shop;
    }

    List<ShopOrder> orders() {
        return List.copyOf(orders);
    }

    /** Jobs as OR-Library writes them: in each row machine and time in turn, all due at once. */
    Machines jobs(String rows) {
        for (String row : rows.strip().split("\n", -1)) {
            String[] numbers = row.strip().split("\\s+", -1);
            List<Work> work = new ArrayList<>();
            for (int i = 0; i + 1 < numbers.length; i += 2) {
                work.add(new Work(Integer.parseInt(numbers[i]), (long) Integer.parseInt(numbers[i + 1]) * UNIT));
            }
            add("job " + orders.size(), 0, new Step(0, 0, work, List.of()));
        }
        return this;
    }

    /** A job of one piece of work at the first machine. */
    Machines job(String name, int time, int due) {
        return job(name, 0, time, 0, due);
    }

    /** A job that comes at its head, is worked on at the first machine, and needs its tail afterwards. */
    Machines job(String name, int head, int time, int tail, int due) {
        return add(
                name,
                due,
                new Step(head, 0, List.of(new Work(0, (long) time * UNIT)), List.of()),
                new Step(0, tail, List.of(), List.of(0)));
    }

    Machines add(String name, int due, Step... steps) {
        orders.add(new ShopOrder(name, due, true, List.of(steps)));
        return this;
    }

    FiniteSchedule by(DispatchRule rule) {
        return FiniteLoading.schedule(shop, orders, rule);
    }

    /** Whatever waits is taken in that sequence of jobs. */
    FiniteSchedule inSequence(List<Integer> sequence) {
        List<Windows> windows =
                orders.stream().map(order -> Windows.of(order, shop)).toList();
        return FiniteLoading.schedule(
                shop, orders, windows, Comparator.comparingInt((Waiting waiting) -> sequence.indexOf(waiting.order())));
    }

    int bound() {
        return LatenessBound.days(
                        shop, orders, by(DispatchRule.FIRST_COME).maxLateness().orElseThrow())
                .orElseThrow();
    }

    /** Least maximum lateness over all sequences of the jobs; in a permutation flow shop and on one machine the optimum. */
    int leastOfAllSequences() {
        return least(
                new ArrayList<>(),
                new ArrayList<>(IntStream.range(0, orders.size()).boxed().toList()));
    }

    private int least(List<Integer> begun, List<Integer> left) {
        if (left.isEmpty()) {
            return inSequence(begun).maxLateness().orElseThrow();
        }
        int least = Integer.MAX_VALUE;
        for (Integer next : List.copyOf(left)) {
            begun.add(next);
            left.remove(next);
            least = Math.min(least, least(begun, left));
            left.add(next);
            begun.remove(next);
        }
        return least;
    }

    /** Names in the order in which they are begun at the first machine. */
    static String sequence(FiniteSchedule schedule) {
        return schedule.all().stream()
                .filter(placed -> placed.centre() == 0)
                .map(placed -> schedule.orders().get(placed.order()).name())
                .reduce("", String::concat);
    }
}
