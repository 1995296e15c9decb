package boltlore.trades.scheduling;

import boltlore.catalogue.Capacity;
import boltlore.catalogue.Capacity.WorkCentre;
import boltlore.trades.KitInWork;
import boltlore.trades.scheduling.finite.DispatchRule;
import boltlore.trades.scheduling.finite.FiniteLoading;
import boltlore.trades.scheduling.finite.FiniteSchedule;
import boltlore.trades.scheduling.finite.LatenessBound;
import boltlore.trades.scheduling.finite.OpenTime;
import boltlore.trades.scheduling.finite.Shop;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Orders planned together.
 *
 * @param on evening from which work begins
 * @param centres those with hours, in the places of the shop's
 * @param orders by name, in the places of the schedule's
 * @param bound days of lateness that no schedule undercuts; none where no order has a date
 */
record WorkPlan(
        LocalDate on,
        Capacity capacity,
        List<WorkCentre> centres,
        List<OrderWork> orders,
        FiniteSchedule schedule,
        DispatchRule rule,
        OptionalInt bound) {

    /** Days on which a centre works in a week. */
    static final int WEEK_DAYS = 5;

    /** Latest dates of orders long overdue lie so far back at most; before, every day counts as a working day. */
    private static final int YEARS_BACK = 3;

    /** @param added hours a week by the names of centres that have more than the capacity says */
    static WorkPlan of(
            List<KitInWork> kits, Capacity capacity, LocalDate on, DispatchRule rule, Map<String, BigDecimal> added) {
        List<WorkCentre> centres = capacity.centres().stream()
                .filter(centre -> centre.open() != null)
                .toList();
        LocalDate first = first(kits, on);
        Shop shop = new Shop(
                first,
                centres.stream()
                        .map(centre -> centre(centre, capacity, first, added))
                        .toList());
        List<OrderWork> orders = kits.stream()
                .sorted(Comparator.comparing(kit -> kit.order().name()))
                .map(kit -> OrderWork.of(kit, on, shop, capacity))
                .toList();
        FiniteSchedule schedule = FiniteLoading.schedule(
                shop, orders.stream().map(OrderWork::shopOrder).toList(), rule);
        OptionalInt bound = schedule.maxLateness().stream()
                .flatMap(reached -> LatenessBound.days(shop, schedule.orders(), reached).stream())
                .findFirst();
        return new WorkPlan(on, capacity, centres, orders, schedule, rule, bound);
    }

    private static LocalDate first(Collection<KitInWork> kits, LocalDate on) {
        return Stream.concat(
                        Stream.of(on),
                        kits.stream()
                                .flatMap(kit -> Stream.of(
                                        kit.order().placed(), kit.order().due())))
                .filter(day -> day != null)
                .min(Comparator.naturalOrder())
                .orElse(on)
                .minusYears(YEARS_BACK);
    }

    private static Shop.Centre centre(
            WorkCentre centre, Capacity capacity, LocalDate first, Map<String, BigDecimal> added) {
        BigDecimal more = added.getOrDefault(centre.name(), BigDecimal.ZERO);
        Capacity.OpenHours open = Objects.requireNonNull(centre.open());
        long rate = open.efficiencyPercent()
                .multiply(BigDecimal.valueOf(100L * open.together()))
                .setScale(0, RoundingMode.DOWN)
                .longValueExact();
        return new Shop.Centre(
                centre.name(),
                open.stations(),
                new OpenTime(first, minutesPerDay(open, more), rate, capacity::worksOn));
    }

    /** Of one station by the clock, with its share of hours a week that are added to the centre. */
    static int minutesPerDay(Capacity.OpenHours open, BigDecimal addedPerWeek) {
        BigDecimal each =
                addedPerWeek.divide(BigDecimal.valueOf((long) WEEK_DAYS * open.stations()), 6, RoundingMode.DOWN);
        return open.hoursPerDay()
                .add(each)
                .multiply(BigDecimal.valueOf(60))
                .setScale(0, RoundingMode.HALF_UP)
                .intValueExact();
    }

    /** Whether a day has that many hours. */
    static boolean fits(Capacity.OpenHours open, BigDecimal addedPerWeek) {
        return minutesPerDay(open, addedPerWeek) <= OpenTime.DAY;
    }

    LocalDate finish(int order) {
        return schedule.shop().date(schedule.finish(order));
    }

    /** Days off from Monday to Friday after the one day up to the other, that one with it. */
    int weekdaysOff(LocalDate from, LocalDate to) {
        return Math.toIntExact(from.plusDays(1)
                .datesUntil(to.plusDays(1))
                .filter(day -> day.getDayOfWeek().getValue() <= WEEK_DAYS && !capacity.worksOn(day))
                .count());
    }

    /** Working days of the workshop after the one day up to the other, that one with it. */
    int workingDays(LocalDate from, LocalDate to) {
        return Math.toIntExact(from.plusDays(1)
                .datesUntil(to.plusDays(1))
                .filter(capacity::worksOn)
                .count());
    }
}
