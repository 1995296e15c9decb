package boltlore.trades.scheduling;

import boltlore.catalogue.Part;
import boltlore.catalogue.Workshop;
import boltlore.findings.Findings;
import boltlore.measure.Digits;
import boltlore.report.CautionNotes;
import boltlore.report.FindingsTable;
import boltlore.report.Heading;
import boltlore.report.Look;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Report;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.scheduling.finite.DispatchRule;
import boltlore.trades.scheduling.finite.FiniteLoading;
import boltlore.trades.scheduling.finite.FiniteSchedule;
import boltlore.trades.scheduling.finite.FiniteSchedule.Placed;
import boltlore.trades.scheduling.finite.Shop;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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

    /** Days from the day of the plan whose work is listed piece by piece. */
    private static final int FIRST_DAYS = 7;

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** What all work of one order at one centre comes to. */
    private record AtCentre(int order, int centre, List<Placed> work) {
        long minutes() {
            return work.stream().mapToLong(placed -> placed.end() - placed.end() + 0).sum();
        }
    }

    Report compose() {
        Workshop workshop = plan.orders().get(0).kit().workshop();
        return Report.named("work-schedule", TITLE)
                .about(orders())
                .by(workshop.name())
                .dated(plan.on())
                .found(findings)
                .glance(new Heading(orders(), Look.TITLE), head("schedule").build(), dates().build())
                .page(front(workshop))
                .build();
    }

    private String orders() {
        return plan.orders().size() + " orders, planned on " + plan.on();
    }

    private ParticularsBuilder head(String name) {
        return Particulars.named(name).say("on", "Planned on", plan.on());
    }

    private PageBuilder front(Workshop workshop) {
        PageBuilder page = Page.named("Orders").landscape().footer(TITLE + ", " + orders());
        page.title(TITLE).add(head("head"));
        CautionNotes.always(page, "work-schedule", workshop, "en");
        page.add(dates());
        FindingsTable.add(page, findings, "en");
        return page;
    }

    private TableBuilder dates() {
        return TableSpec.<Integer>named("orders")
                .text("order", "Order", order -> plan.orders().get(order).order().name())
                .date("finish", "Finished", plan::finish)
                .of(IntStream.range(0, plan.orders().size()).boxed().toList());
    }
}
