package boltlore.trades.scheduling;

import boltlore.catalogue.Capacity.DaysOff;
import boltlore.catalogue.Workshop;
import boltlore.findings.Findings;
import boltlore.report.FindingsTable;
import boltlore.report.Heading;
import boltlore.report.Kind;
import boltlore.report.Look;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Report;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.report.Words;
import boltlore.trades.scheduling.finite.DispatchRule;
import boltlore.trades.scheduling.finite.FiniteLoading;
import boltlore.trades.scheduling.finite.FiniteSchedule;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The schedule of many orders: when each is finished and why then, the load of each work centre, and what to begin with.
 *
 * @param before the same orders without the hours that are added; the plan itself where none are
 * @param added hours a week by work centre
 */
record ScheduleReport(
        WorkPlan plan, WorkPlan before, Map<String, BigDecimal> added, List<WeekLoad> loads, Findings findings) {

    private static final String TITLE = "Work schedule";

    private static final String ASSUMED =
            "Bought parts are taken as ordered on the day of their order, and come after their"
                    + " lead time. Nothing of the work in the house is taken as done before the plan begins. Each step of an order"
                    + " begins on the morning after all before it are done and takes at least the days of the price's lead time; where"
                    + " its work centre has no time, it waits. Operations are counted with the set-up and run of the job cards, each"
                    + " rounded up to a minute; what is done outside takes days and no hours of ours. Each order's powder runs"
                    + " are counted by themselves, each with the longest change of powder before it, so that no sequence of"
                    + " them takes longer.";

    private record RuleResult(DispatchRule rule, FiniteSchedule schedule) {

        private IntStream lateness() {
            return IntStream.range(0, schedule.orders().size())
                    .filter(order -> schedule.orders().get(order).dated())
                    .map(schedule::lateness);
        }

        long late() {
            return lateness().filter(days -> days > 0).count();
        }

        int lateDays() {
            return lateness().filter(days -> days > 0).sum();
        }
    }

    Report compose() {
        Workshop workshop = workshop();
        LoadPages load = new LoadPages(plan, loads, TITLE + ", " + orders());
        WorkPages work = new WorkPages(plan, TITLE + ", " + orders());
        return Report.named("work-schedule", TITLE)
                .about(orders())
                .by(workshop.name())
                .in(Words.of(workshop.language(), ScheduleReport.class))
                .dated(plan.on())
                .found(findings)
                .glance(
                        new Heading(orders(), Look.TITLE),
                        head("schedule").build(),
                        dates("orders", false).build())
                .page(front())
                .page(load.load())
                .page(load.inFigures())
                .page(work.centres(load.centres()))
                .page(work.first(workshop))
                .data(load.weeks())
                .data(work.orderWork())
                .data(work.operations())
                .build();
    }

    /** 'Orders BL-1001, BL-1002, planned on 2026-06-01'. */
    private String orders() {
        int count = plan.orders().size();
        String named =
                plan.orders().stream().limit(3).map(work -> work.order().name()).collect(Collectors.joining(", "));
        return (count == 1 ? "Order " : count > 3 ? count + " orders, " : "Orders ") + named + (count > 3 ? " …" : "")
                + ", planned on " + plan.on();
    }

    private Workshop workshop() {
        return plan.orders().get(0).kit().workshop();
    }

    private PageBuilder front() {
        PageBuilder page = Page.named("Orders").landscape().footer(TITLE + ", " + orders());
        page.title(TITLE).add(head("schedule-head"));
        page.heading("When each order is finished").add(dates("dates", true));
        if (!added.isEmpty()) {
            page.heading("What the added hours change");
            if (!changed().isEmpty()) {
                page.add(changes());
            }
            int same = plan.orders().size() - changed().size();
            page.note(
                    "unchanged",
                    same + (same == 1 ? " order is" : " orders are") + " finished on the same day as without them.");
        }
        page.heading("What other rules would give")
                .add(rules())
                .note(
                        "A free station takes of the work that waits what its rule puts first. Lateness is in calendar days,"
                                + " below 0 where even the latest order is early.");
        FindingsTable.add(page, findings, workshop().language());
        return page.note(ASSUMED + daysOffKnown());
    }

    private ParticularsBuilder head(String name) {
        ParticularsBuilder head = Particulars.named(name)
                .say("on", "Planned on", plan.on())
                .say("rule", "Rule", plan.rule().says());
        added.forEach(
                (centre, hours) -> head.say("added-" + centre, "Added at " + called(centre), Kind.quantity(), hours));
        plan.schedule()
                .maxLateness()
                .ifPresent(days -> head.say(
                                "lateness", "Largest lateness (days)", Kind.whole(), BigDecimal.valueOf(days))
                        .say("bound", "No schedule has less than (days)", Kind.whole(), BigDecimal.valueOf(bound(days)))
                        .say("proven", "Best that is possible", best(days)));
        return head.say("bottleneck", "Fullest work centre", new LoadPages(plan, loads, "").fullest());
    }

    private String best(int days) {
        if (!plan.orders().stream().allMatch(OrderWork::whole)) {
            return "not said: some work is not in the plan";
        }
        int better = days - bound(days);
        return better == 0
                ? "yes: the bound is reached"
                : "not proven: at most " + better + (better == 1 ? " day" : " days") + " better";
    }

    private int bound(int reached) {
        return plan.bound().orElse(reached);
    }

    private String called(String centre) {
        return plan.centres().stream()
                .filter(each -> each.name().equals(centre))
                .map(each -> each.says().in(workshop().language()) + " (hours a week)")
                .findFirst()
                .orElse(centre);
    }

    /** @param whole with what only paper has room for */
    private TableBuilder dates(String name, boolean whole) {
        TableSpec<Integer> dates = TableSpec.<Integer>named(name)
                .text(
                        "order",
                        "Order",
                        order -> plan.orders().get(order).order().name());
        if (whole) {
            dates.text(
                            "customer",
                            "Customer",
                            26,
                            order -> plan.orders().get(order).order().customer())
                    .date(
                            "placed",
                            "Ordered",
                            order -> plan.orders().get(order).order().placed());
        }
        dates.date("due", "Due", order -> plan.orders().get(order).order().due())
                .date("finish", "Finished", this::promised)
                .whole("late", "Late", "working days", this::late)
                .whole("slack", "In hand", "working days", this::inHand);
        return dates.text("why", "What sets the day", 60, this::why)
                .of(IntStream.range(0, plan.orders().size()).boxed().toList());
    }

    /** Nothing where work is not in the plan. */
    private @Nullable LocalDate promised(int order) {
        return plan.orders().get(order).whole() ? plan.finish(order) : null;
    }

    private @Nullable Integer late(int order) {
        LocalDate due = plan.orders().get(order).order().due();
        LocalDate finish = promised(order);
        return due == null || finish == null || !finish.isAfter(due) ? null : plan.workingDays(due, finish);
    }

    private @Nullable Integer inHand(int order) {
        LocalDate due = plan.orders().get(order).order().due();
        LocalDate finish = promised(order);
        return due == null || finish == null || finish.isAfter(due) ? null : plan.workingDays(finish, due);
    }

    private String why(int order) {
        return promised(order) == null
                ? "Not promised: some of its work is not in the plan; see the findings."
                : SetDate.of(plan, order).says(workshop().language());
    }

    private TableBuilder rules() {
        List<RuleResult> results = Arrays.stream(DispatchRule.values())
                .map(rule -> new RuleResult(
                        rule,
                        rule == plan.rule()
                                ? plan.schedule()
                                : FiniteLoading.schedule(
                                        plan.schedule().shop(), plan.schedule().orders(), rule)))
                .toList();
        return TableSpec.<RuleResult>named("rules")
                .text("rule", "Rule", result -> result.rule().says())
                .code("code", result -> result.rule().written())
                .text("taken", "Taken", result -> result.rule() == plan.rule() ? "this plan" : "")
                .whole(
                        "largest",
                        "Largest lateness",
                        "days",
                        result -> result.schedule().maxLateness().isPresent()
                                ? result.schedule().maxLateness().getAsInt()
                                : null)
                .whole("late", "Late orders", "", RuleResult::late)
                .whole("sum", "All days late", "days", RuleResult::lateDays)
                .of(results);
    }

    private List<Integer> changed() {
        return IntStream.range(0, plan.orders().size())
                .filter(order ->
                        plan.schedule().finish(order) != before.schedule().finish(order))
                .boxed()
                .toList();
    }

    private TableBuilder changes() {
        return TableSpec.<Integer>named("changes")
                .text(
                        "order",
                        "Order",
                        order -> plan.orders().get(order).order().name())
                .date("due", "Due", order -> plan.orders().get(order).order().due())
                .date("before", "Finished without them", before::finish)
                .date("after", "Finished with them", plan::finish)
                .whole(
                        "days",
                        "Earlier",
                        "days",
                        order -> before.schedule().finish(order)
                                - plan.schedule().finish(order))
                .of(changed());
    }

    /** Whoever looks beyond the last known day off is told. */
    private String daysOffKnown() {
        return " Nobody works on Saturdays, Sundays and days off; the last day off that is known is "
                + plan.capacity().daysOff().stream()
                        .map(DaysOff::to)
                        .max(LocalDate::compareTo)
                        .map(LocalDate::toString)
                        .orElse("none")
                + ".";
    }
}
