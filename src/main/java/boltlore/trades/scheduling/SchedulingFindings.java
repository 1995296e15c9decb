package boltlore.trades.scheduling;

import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.trades.KitFinding;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Holds the plan against dates and hours. */
final class SchedulingFindings {

    private SchedulingFindings() {}

    /** Of orders planned together. */
    static Findings together(WorkPlan plan, List<WeekLoad> loads) {
        List<Finding> found = new ArrayList<>();
        for (int order = 0; order < plan.orders().size(); order++) {
            if (plan.orders().get(order).shopOrder().dated()) {
                dated(plan, order, found);
            }
        }
        loads.stream().filter(load -> load.over() > 0).forEach(load -> found.add(overloaded(plan, load)));
        return new Findings(found).and(notJudged(plan));
    }

    /** Whether an order that is planned alone, from the day on which its price lets it begin, keeps its price's lead time. */
    static Findings leadTime(WorkPlan plan) {
        OrderWork work = plan.orders().get(0);
        LocalDate priced = work.priced(plan.on());
        LocalDate finish = plan.finish(0);
        return finish.isAfter(priced)
                ? Findings.of(Finding.of(
                        SchedulingFinding.LEAD_TIME_TOO_SHORT,
                        "lead time",
                        "order",
                        work.order().name(),
                        "priced",
                        priced,
                        "finish",
                        finish,
                        "days",
                        plan.workingDays(priced, finish),
                        "why",
                        SetDate.of(plan, 0)))
                : Findings.NONE;
    }

    static Findings noCapacity() {
        return Findings.of(Finding.of(
                KitFinding.NOT_JUDGED, "schedule", "trade", "Work schedule", "file", "workshop/capacity.json"));
    }

    private static void dated(WorkPlan plan, int order, List<Finding> found) {
        String name = plan.orders().get(order).order().name();
        LocalDate due =
                plan.schedule().shop().date(plan.orders().get(order).shopOrder().due());
        LocalDate finish = plan.finish(order);
        if (due.isBefore(plan.on())) {
            found.add(Finding.of(
                    SchedulingFinding.DUE_DATE_PAST,
                    name,
                    "order",
                    name,
                    "due",
                    due,
                    "on",
                    plan.on(),
                    "finish",
                    finish,
                    "why",
                    SetDate.of(plan, order)));
        } else if (finish.isAfter(due)) {
            found.add(Finding.of(
                    SchedulingFinding.ORDER_LATE,
                    name,
                    "order",
                    name,
                    "due",
                    due,
                    "finish",
                    finish,
                    "days",
                    plan.workingDays(due, finish),
                    "why",
                    SetDate.of(plan, order)));
        }
    }

    private static Finding overloaded(WorkPlan plan, WeekLoad load) {
        return Finding.of(
                SchedulingFinding.WEEK_OVERLOADED,
                plan.centres().get(load.centre()).name() + " " + load.week(),
                "centre",
                plan.centres().get(load.centre()).says(),
                "week",
                load.week(),
                "from",
                load.monday(),
                "needed",
                hours(load.needed()),
                "available",
                hours(load.available()),
                "over",
                hours(load.over()),
                "orders",
                load.byOrder().keySet());
    }

    /** Hours with one decimal, rounded up, so that what is over never reads 0. */
    static BigDecimal hours(long minutes) {
        return BigDecimal.valueOf(minutes).divide(BigDecimal.valueOf(60), 1, RoundingMode.UP);
    }

    /** Work at one centre without hours, or of one operation without a centre. */
    private record NotInPlan(OrderWork.Unplaced work, TreeSet<String> operations, TreeSet<String> orders) {

        String subject() {
            return work.centre() == null ? work.operation() : work.centre().name();
        }

        Finding finding() {
            return work.centre() == null
                    ? Finding.of(
                            SchedulingFinding.OPERATION_WITHOUT_CENTRE,
                            subject(),
                            "operation",
                            work.operation(),
                            "orders",
                            orders)
                    : Finding.of(
                            SchedulingFinding.CENTRE_WITHOUT_HOURS,
                            subject(),
                            "centre",
                            work.centre().says(),
                            "operations",
                            operations,
                            "orders",
                            orders);
        }

        NotInPlan and(NotInPlan other) {
            operations.addAll(other.operations);
            orders.addAll(other.orders);
            return this;
        }
    }

    private static Findings notJudged(WorkPlan plan) {
        Map<String, NotInPlan> found = new LinkedHashMap<>();
        for (OrderWork work : plan.orders()) {
            for (OrderWork.Unplaced unplaced : work.unplaced()) {
                NotInPlan not = new NotInPlan(
                        unplaced,
                        new TreeSet<>(List.of(unplaced.operation())),
                        new TreeSet<>(List.of(work.order().name())));
                found.merge(not.subject(), not, NotInPlan::and);
            }
        }
        Findings ofKits = plan.orders().stream().anyMatch(OrderWork::lacksKitWork)
                ? Findings.of(Finding.of(
                        KitFinding.NOT_JUDGED,
                        "work on kits",
                        "trade",
                        "Work schedule",
                        "file",
                        "workshop/pricing.json"))
                : Findings.NONE;
        return found.values().stream()
                .map(NotInPlan::finding)
                .collect(Findings.collected())
                .and(ofKits);
    }
}
