package boltlore.trades.scheduling;

import boltlore.catalogue.Part;
import boltlore.catalogue.Workshop;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.scheduling.finite.FiniteSchedule.Placed;
import boltlore.trades.scheduling.finite.Shop;
import boltlore.trades.scheduling.finite.Windows;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What each work centre does for each order, and what it begins with. */
final class WorkPages {

    /** Days from the day of the plan whose work is listed piece by piece. */
    private static final int FIRST_DAYS = 3;

    /** What a centre does for an order. */
    private record AtCentre(int order, int centre, List<Placed> work) {}

    private final WorkPlan plan;
    private final String footer;

    WorkPages(WorkPlan plan, String footer) {
        this.plan = plan;
        this.footer = footer;
    }

    /** Below what all centres come to. */
    PageBuilder centres(TableBuilder all) {
        PageBuilder page = Page.named("Work centres")
                .landscape()
                .footer(footer)
                .title("Work centres")
                .add(all);
        return page.heading("When each ends its last work of each order, with the days in hand")
                .add(lastWork())
                .note(
                        "Days in hand are the fewest calendar days by which some work of the order there may end later without the"
                                + " order being late; with a minus it ends too late. An order without a date has none.");
    }

    private TableBuilder lastWork() {
        Map<Integer, Map<Integer, AtCentre>> byOrder = new TreeMap<>();
        atCentres()
                .forEach(at -> byOrder.computeIfAbsent(at.order(), none -> new TreeMap<>())
                        .put(at.centre(), at));
        TableSpec<Map.Entry<Integer, Map<Integer, AtCentre>>> table =
                TableSpec.<Map.Entry<Integer, Map<Integer, AtCentre>>>named("last-work")
                        .text("order", "Order", entry -> name(entry.getKey()));
        for (int centre = 0; centre < plan.centres().size(); centre++) {
            int place = centre;
            table.text(
                    plan.centres().get(centre).name(),
                    called(centre),
                    15,
                    entry -> Optional.ofNullable(entry.getValue().get(place))
                            .map(this::lastEnd)
                            .orElse(""));
        }
        return table.of(byOrder.entrySet());
    }

    private String lastEnd(AtCentre at) {
        Integer slack = slack(at);
        return at.work().stream().map(this::ends).max(Comparator.naturalOrder()).orElseThrow()
                + (slack == null ? "" : (slack < 0 ? " " : " +") + slack);
    }

    /** What each centre does for each order, for programs. */
    TableBuilder orderWork() {
        return TableSpec.<AtCentre>named("order-work")
                .text("order", "Order", at -> name(at.order()))
                .text("centre", "Work centre", at -> called(at.centre()))
                .code("centre-code", at -> plan.centres().get(at.centre()).name())
                .whole("minutes", "Work", "min", this::minutes)
                .date(
                        "begins",
                        "Begins",
                        at -> at.work().stream()
                                .map(this::begins)
                                .min(Comparator.naturalOrder())
                                .orElse(null))
                .date(
                        "ends",
                        "Ends",
                        at -> at.work().stream()
                                .map(this::ends)
                                .max(Comparator.naturalOrder())
                                .orElse(null))
                .whole("waits", "Waits at most", "days", this::waits)
                .whole("slack", "Least in hand", "days", this::slack)
                .of(atCentres());
    }

    private List<AtCentre> atCentres() {
        Map<Integer, Map<Integer, List<Placed>>> found = new TreeMap<>();
        plan.schedule()
                .all()
                .forEach(placed -> found.computeIfAbsent(placed.order(), none -> new TreeMap<>())
                        .computeIfAbsent(placed.centre(), none -> new ArrayList<>())
                        .add(placed));
        List<AtCentre> all = new ArrayList<>();
        found.forEach(
                (order, byCentre) -> byCentre.forEach((centre, work) -> all.add(new AtCentre(order, centre, work))));
        return all;
    }

    private long minutes(AtCentre at) {
        return at.work().stream().mapToLong(this::minutes).sum();
    }

    private long minutes(Placed placed) {
        return plan.schedule()
                .orders()
                .get(placed.order())
                .steps()
                .get(placed.step())
                .work()
                .get(placed.work())
                .minutes();
    }

    private int waits(AtCentre at) {
        return at.work().stream()
                .mapToInt(placed -> Math.max(0, Shop.startDay(placed.start()) - Shop.startDay(placed.ready())))
                .max()
                .orElse(0);
    }

    /** Neither the work nor its step, which takes its days too, may be later than for the order to be in time. */
    private int slack(Placed placed) {
        Windows windows = plan.schedule().windows(placed.order());
        int ofStep = windows.latestStart(placed.step()) - plan.schedule().start(placed.order(), placed.step());
        int ofWork = Shop.endDay(windows.end(placed.step(), placed.work())) - Shop.endDay(placed.end());
        return Math.min(ofStep, ofWork);
    }

    private @Nullable Integer slack(AtCentre at) {
        return plan.orders().get(at.order()).shopOrder().dated()
                ? at.work().stream()
                        .map(this::slack)
                        .min(Comparator.naturalOrder())
                        .orElse(null)
                : null;
    }

    /** Work of one step that follows at the same centre is one row. */
    PageBuilder first(Workshop workshop) {
        int last = plan.schedule().shop().day(plan.on()) + FIRST_DAYS;
        Map<List<Integer>, List<Placed>> jobs = new LinkedHashMap<>();
        plan.schedule().all().stream()
                .sorted(Comparator.comparingInt(Placed::centre).thenComparingLong(Placed::start))
                .forEach(placed -> jobs.computeIfAbsent(
                                List.of(placed.centre(), placed.order(), placed.step()), none -> new ArrayList<>())
                        .add(placed));
        TableSpec<List<Placed>> spec = jobs();
        TableBuilder table = spec.empty();
        int centre = -1;
        for (List<Placed> job : jobs.values()) {
            Placed placed = job.get(0);
            if (Shop.startDay(placed.start()) <= last) {
                if (placed.centre() != centre) {
                    centre = placed.centre();
                    table.group(plan.centres().get(centre).name(), called(centre));
                }
                spec.add(table, "", job);
            }
        }
        PageBuilder page =
                Page.named("First days").landscape().footer(footer).title("What each work centre begins with");
        CautionNotes.always(page, "work-schedule", workshop, workshop.language());
        return page.note("Work that begins within " + FIRST_DAYS
                        + " days of the plan, in its order. Drawings and cautions stand"
                        + " on the job cards and on the sheets of the trades.")
                .add(table);
    }

    private TableSpec<List<Placed>> jobs() {
        return TableSpec.<List<Placed>>named("first-work")
                .date("begins", "Begins", job -> begins(job.get(0)))
                .date("latest", "At the latest", job -> latest(job.get(0)))
                .text("order", "Order", job -> name(job.get(0).order()))
                .text("part", "Part", 16, job -> number(job.get(0)))
                .text("name", "Name", 40, job -> says(job.get(0)))
                .text(
                        "operations",
                        "Operations",
                        30,
                        job -> job.stream().map(this::operation).collect(Collectors.joining(", ")))
                .whole(
                        "minutes",
                        "Work",
                        "min",
                        job -> job.stream().mapToLong(this::minutes).sum())
                .date("ends", "Ends", job -> ends(job.get(job.size() - 1)))
                .box(Column.tick("done", "Done"));
    }

    /** Everything that has its place, for programs. */
    TableBuilder operations() {
        return TableSpec.<Placed>named("operations")
                .text("centre", "Work centre", placed -> called(placed.centre()))
                .code(
                        "centre-code",
                        placed -> plan.centres().get(placed.centre()).name())
                .whole("station", "Station", "", placed -> placed.station() + 1)
                .date("begins", "Begins", this::begins)
                .text("order", "Order", placed -> name(placed.order()))
                .text("part", "Part", 16, this::number)
                .text("name", "Name", 36, this::says)
                .text("operation", "Operation", 22, this::operation)
                .whole("minutes", "Work", "min", this::minutes)
                .date("ends", "Ends", this::ends)
                .date("latest", "Begin at the latest", this::latest)
                .of(plan.schedule().all());
    }

    private String name(int order) {
        return plan.orders().get(order).order().name();
    }

    private String called(int centre) {
        return LoadPages.called(plan, centre);
    }

    private OrderWork.Done done(Placed placed) {
        return plan.orders().get(placed.order()).steps().get(placed.step());
    }

    private String number(Placed placed) {
        Part part = done(placed).part();
        return part == null ? "" : part.number().text();
    }

    private String says(Placed placed) {
        OrderWork.Done done = done(placed);
        Part part = done.part();
        return part != null
                ? plan.orders().get(0).kit().says(part.name())
                : done.run() > 0 ? "Own oven, powder run " + done.run() + " of the order" : "The kit";
    }

    private String operation(Placed placed) {
        return done(placed).operations().get(placed.work());
    }

    private LocalDate begins(Placed placed) {
        return plan.schedule().shop().date(Shop.startDay(placed.start()));
    }

    private LocalDate ends(Placed placed) {
        return plan.schedule().shop().date(Shop.endDay(placed.end()));
    }

    private @Nullable LocalDate latest(Placed placed) {
        return plan.orders().get(placed.order()).shopOrder().dated()
                ? plan.schedule()
                        .shop()
                        .date(Shop.startDay(
                                plan.schedule().windows(placed.order()).latestBegin(placed.step(), placed.work())))
                : null;
    }
}
