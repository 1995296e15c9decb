package boltlore.trades.scheduling;

import boltlore.trades.scheduling.finite.Shop;
import boltlore.trades.scheduling.finite.ShopOrder;
import boltlore.trades.scheduling.finite.ShopOrder.Work;
import boltlore.trades.scheduling.finite.Windows;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What is asked of a work centre in a week, whatever it can do, beside what it can do (load profile: J. Orlicky, Material
 * Requirements Planning, 1975; from memory). Each order's work stands in the days in which its step must be done for the order
 * to be in time, evenly spread; of an order without a date, in the days in which it can be done first; what should have been
 * done before the plan begins, in its first days.
 *
 * @param centre place of the work centre
 * @param monday of the week
 * @param needed standard minutes
 * @param available standard minutes of all stations on the days of the week that the plan holds
 * @param set standard minutes that the schedule has put there
 * @param byOrder minutes of each order
 */
record WeekLoad(int centre, LocalDate monday, long needed, long available, long set, SortedMap<String, Long> byOrder) {

    long over() {
        return Math.max(0, needed - available);
    }

    /** As ISO 8601 writes it: '2026-W23'. */
    String week() {
        int week = monday.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
        return monday.get(IsoFields.WEEK_BASED_YEAR) + (week < 10 ? "-W0" : "-W") + week;
    }

    /** By centre, then by week, without gaps from the first week of the plan to the last with any work. */
    static List<WeekLoad> of(WorkPlan plan) {
        Shop shop = plan.schedule().shop();
        List<SortedMap<Integer, SortedMap<String, Long>>> byDay = needed(plan);
        LocalDate first = monday(plan.on().plusDays(1));
        LocalDate last = byDay.stream()
                .filter(days -> !days.isEmpty())
                .map(days -> monday(shop.date(days.lastKey())))
                .reduce(first, (one, other) -> one.isAfter(other) ? one : other);
        for (int order = 0; order < plan.orders().size(); order++) {
            LocalDate finish = monday(plan.finish(order));
            last = last.isAfter(finish) ? last : finish;
        }
        List<WeekLoad> loads = new ArrayList<>();
        for (int centre = 0; centre < byDay.size(); centre++) {
            SortedMap<Integer, Long> set = plan.schedule().minutesByDay(centre);
            for (LocalDate monday = first; !monday.isAfter(last); monday = monday.plusWeeks(1)) {
                loads.add(week(plan, centre, monday, byDay.get(centre), set));
            }
        }
        return loads;
    }

    private static WeekLoad week(
            WorkPlan plan,
            int centre,
            LocalDate monday,
            SortedMap<Integer, SortedMap<String, Long>> needed,
            SortedMap<Integer, Long> set) {
        Shop shop = plan.schedule().shop();
        Shop.Centre of = shop.centres().get(centre);
        int from = Math.max(shop.day(monday), shop.day(plan.on()) + 1);
        int to = shop.day(monday) + 7;
        long available = 0;
        for (int day = from; day < to; day++) {
            available +=
                    of.open().worksOn(day) ? (long) of.stations() * of.open().minutesPerDay() : 0;
        }
        SortedMap<String, Long> byOrder = new TreeMap<>();
        needed.subMap(from, to)
                .values()
                .forEach(day -> day.forEach((order, minutes) -> byOrder.merge(order, minutes, Long::sum)));
        return new WeekLoad(
                centre,
                monday,
                byOrder.values().stream().mapToLong(Long::longValue).sum(),
                available,
                set.subMap(from, to).values().stream()
                        .mapToLong(Long::longValue)
                        .sum(),
                byOrder);
    }

    private static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    /** By centre, day and order. */
    private static List<SortedMap<Integer, SortedMap<String, Long>>> needed(WorkPlan plan) {
        Shop shop = plan.schedule().shop();
        List<SortedMap<Integer, SortedMap<String, Long>>> byDay = new ArrayList<>();
        shop.centres().forEach(centre -> byDay.add(new TreeMap<>()));
        for (int o = 0; o < plan.orders().size(); o++) {
            ShopOrder order = plan.orders().get(o).shopOrder();
            Windows windows = plan.schedule().windows(o);
            for (int i = 0; i < order.steps().size(); i++) {
                int from = order.dated() ? windows.latestStart(i) : windows.start(i);
                int to = order.dated() ? windows.latestFinish(i) : windows.finish(i);
                for (Work work : order.steps().get(i).work()) {
                    List<Integer> days = open(shop, work.centre(), Math.max(from, shop.day(plan.on())), to);
                    spread(work.minutes(), days, order.name(), byDay.get(work.centre()));
                }
            }
        }
        return byDay;
    }

    /** Working days after the first evening up to the last; the next one where there is none among them. */
    private static List<Integer> open(Shop shop, int centre, int after, int to) {
        List<Integer> days = new ArrayList<>();
        for (int day = after + 1; day <= to || days.isEmpty(); day++) {
            if (shop.centres().get(centre).open().worksOn(day)) {
                days.add(day);
            }
        }
        return days;
    }

    private static void spread(
            long minutes, List<Integer> days, String order, SortedMap<Integer, SortedMap<String, Long>> byDay) {
        for (int i = 0; i < days.size(); i++) {
            long share = minutes * (i + 1) / days.size() - minutes * i / days.size();
            if (share > 0) {
                byDay.computeIfAbsent(days.get(i), none -> new TreeMap<>()).merge(order, share, Long::sum);
            }
        }
    }

    /** Of each centre over all weeks. */
    static Map<Integer, List<WeekLoad>> byCentre(List<WeekLoad> loads) {
        Map<Integer, List<WeekLoad>> byCentre = new TreeMap<>();
        loads.forEach(load -> byCentre.computeIfAbsent(load.centre(), none -> new ArrayList<>())
                .add(load));
        return byCentre;
    }
}
