package boltlore.trades.scheduling;

import boltlore.catalogue.Part;
import boltlore.measure.Digits;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.scheduling.finite.FiniteSchedule.Placed;
import boltlore.trades.scheduling.finite.Shop;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What each work centre is asked for week by week, what it does for each order, and what it begins with. */
final class WorkPages {

    /** Days from the day of the plan whose work is listed piece by piece. */
    private static final int FIRST_DAYS = 7;

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** What a centre does for an order. */
    private record AtCentre(int order, int centre, List<Placed> work) {}

    /** All weeks of a centre. */
    private record Centre(String says, List<WeekLoad> weeks) {

        long needed() {
            return weeks.stream().mapToLong(WeekLoad::needed).sum();
        }

        long available() {
            return weeks.stream().mapToLong(WeekLoad::available).sum();
        }

        /** Of what there is, in per cent, one decimal. */
        BigDecimal share() {
            return available() == 0
                    ? BigDecimal.ZERO
                    : BigDecimal.valueOf(needed())
                            .multiply(HUNDRED)
                            .divide(BigDecimal.valueOf(available()), MathContext.DECIMAL64)
                            .setScale(1, RoundingMode.HALF_UP);
        }

        long overWeeks() {
            return weeks.stream().filter(week -> week.over() > 0).count();
        }
    }

    private final WorkPlan plan;
    private final List<WeekLoad> loads;
    private final String footer;

    WorkPages(WorkPlan plan, List<WeekLoad> loads, String footer) {
        this.plan = plan;
        this.loads = loads;
        this.footer = footer;
    }

    private static List<Centre> centres(WorkPlan plan, List<WeekLoad> loads) {
        List<Centre> all = new ArrayList<>();
        WeekLoad.byCentre(loads)
                .forEach((centre, weeks) ->
                        all.add(new Centre(plan.centres().get(centre).says().english(), weeks)));
        return all;
    }

    /** The centre of which the largest share of its hours is needed: 'Welding, 83.2 % of its hours in 30 weeks'. */
    static String bottleneck(WorkPlan plan, List<WeekLoad> loads) {
        return centres(plan, loads).stream()
                .max(Comparator.comparing(Centre::share))
                .map(centre -> centre.says() + ", " + Digits.plain(centre.share()) + " % of its hours in "
                        + centre.weeks().size() + " weeks")
                .orElse("none has hours");
    }

    PageBuilder load() {
        PageBuilder page = Page.named("Load").landscape().footer(footer).title("Load of the work centres by week");
        page.note("Outlined: hours that are needed in the week for orders to be in time, whatever the centre can do. Dashed:"
                + " hours that the centre has. Hatched, with the hours above: too few. Of an order without a date the work"
                + " stands where it can be done first, and what should have been done before this plan in its first days.");
        for (Centre centre : centres(plan, loads)) {
            page.picture(LoadDrawing.draw(centre.says(), centre.weeks()));
        }
        if (loads.size() > LoadDrawing.MOST_WEEKS * plan.centres().size()) {
            page.note("Drawn are the first " + LoadDrawing.MOST_WEEKS + " weeks; the table has all.");
        }
        return page.heading("Hours by week: needed, and where that is too much, > what there is").add(weekByWeek());
    }

    private TableBuilder weekByWeek() {
        Map<LocalDate, List<WeekLoad>> byWeek = new TreeMap<>();
        loads.forEach(load -> byWeek.computeIfAbsent(load.monday(), none -> new ArrayList<>())
                .add(load));
        TableSpec<List<WeekLoad>> table = TableSpec.<List<WeekLoad>>named("load")
                .text("week", "Week", week -> week.get(0).week())
                .date("from", "From", week -> week.get(0).monday());
        for (int centre = 0; centre < plan.centres().size(); centre++) {
            int place = centre;
            table.text(
                    plan.centres().get(centre).name(),
                    plan.centres().get(centre).says().english(),
                    13,
                    week -> shown(week.get(place)));
        }
        return table.of(byWeek.values());
    }

    private static String shown(WeekLoad load) {
        String needed = hours(load.needed());
        return load.needed() == 0 ? "" : load.over() == 0 ? needed : needed + " > " + hours(load.available());
    }

    private static String hours(long minutes) {
        return Digits.plain(SchedulingFindings.hours(minutes));
    }

    PageBuilder centres() {
        PageBuilder page = Page.named("Work centres").landscape().footer(footer).title("Work centres");
        page.add(TableSpec.<Centre>named("centres")
                .text("centre", "Work centre", Centre::says)
                .decimal("needed", "Needed", "h", 1, centre -> SchedulingFindings.hours(centre.needed()))
                .decimal("available", "There", "h", 1, centre -> SchedulingFindings.hours(centre.available()))
                .percent("share", "Load", 1, Centre::share)
                .whole("over", "Weeks with too few hours", "", Centre::overWeeks)
                .of(centres(plan, loads)));
        return page.heading("What each does for each order")
                .add(TableSpec.<AtCentre>named("order-work")
                        .text("order", "Order", at -> name(at.order()))
                        .text("centre", "Work centre", at -> called(at.centre()))
                        .decimal("hours", "Work", "h", 1, at -> SchedulingFindings.hours(minutes(at)))
                        .date("begins", "Begins", at -> at.work().stream()
                                .map(this::begins)
                                .min(Comparator.naturalOrder())
                                .orElse(null))
                        .date("ends", "Ends", at -> at.work().stream()
                                .map(this::ends)
                                .max(Comparator.naturalOrder())
                                .orElse(null))
                        .whole("waits", "Waits at most", "days", this::waits)
                        .whole("slack", "Least in hand", "days", this::slack)
                        .of(atCentres()))
                .note("Days in hand are calendar days by which the work may end later without its order being late; below 0 it"
                        + " ends too late. An order without a date has none.");
    }

    private List<AtCentre> atCentres() {
        Map<Integer, Map<Integer, List<Placed>>> found = new TreeMap<>();
        plan.schedule().all().forEach(placed -> found.computeIfAbsent(placed.order(), none -> new TreeMap<>())
                .computeIfAbsent(placed.centre(), none -> new ArrayList<>())
                .add(placed));
        List<AtCentre> all = new ArrayList<>();
        found.forEach((order, byCentre) ->
                byCentre.forEach((centre, work) -> all.add(new AtCentre(order, centre, work))));
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

    private @Nullable Integer slack(AtCentre at) {
        return plan.orders().get(at.order()).shopOrder().dated()
                ? at.work().stream()
                        .map(placed -> Shop.endDay(
                                        plan.schedule().windows(placed.order()).end()[placed.step()][placed.work()])
                                - Shop.endDay(placed.end()))
                        .min(Comparator.naturalOrder())
                        .orElse(null)
                : null;
    }

    PageBuilder first() {
        int last = plan.schedule().shop().day(plan.on()) + FIRST_DAYS;
        List<Placed> begun = plan.schedule().all().stream()
                .filter(placed -> Shop.startDay(placed.start()) <= last)
                .sorted(Comparator.comparingInt(Placed::centre)
                        .thenComparingLong(Placed::start)
                        .thenComparingInt(Placed::station))
                .toList();
        PageBuilder page = Page.named("First days").landscape().footer(footer).title("What each work centre begins with");
        page.note("Work that begins within " + FIRST_DAYS + " days of the plan, in its order. Cautions and drawings stand on"
                + " the job cards and on the sheets of the trades.");
        TableSpec<Placed> spec = listed(TableSpec.named("first-work"));
        TableBuilder table = spec.empty();
        int centre = -1;
        for (Placed placed : begun) {
            if (placed.centre() != centre) {
                centre = placed.centre();
                table.group(plan.centres().get(centre).name(), called(centre));
            }
            spec.add(table, "", placed);
        }
        return page.add(table);
    }

    private TableSpec<Placed> listed(TableSpec<Placed> table) {
        return table.date("begins", "Begins", this::begins)
                .text("order", "Order", placed -> name(placed.order()))
                .text("part", "Part", 16, placed -> part(placed) == null ? "" : part(placed).number().text())
                .text("name", "Name", 36, this::says)
                .text("operation", "Operation", 22, this::operation)
                .whole("minutes", "Work", "min", this::minutes)
                .date("ends", "Ends", this::ends)
                .date("latest", "Begin at the latest", this::latest);
    }

    /** Everything that has its place, for programs. */
    TableBuilder operations() {
        return listed(TableSpec.<Placed>named("operations")
                        .text("centre", "Work centre", placed -> called(placed.centre()))
                        .code("centre-code", placed -> plan.centres().get(placed.centre()).name())
                        .whole("station", "Station", "", placed -> placed.station() + 1))
                .of(plan.schedule().all());
    }

    /** The load for programs. */
    TableBuilder weeks() {
        return TableSpec.<WeekLoad>named("weeks")
                .text("centre", "Work centre", load -> called(load.centre()))
                .code("centre-code", load -> plan.centres().get(load.centre()).name())
                .text("week", "Week", WeekLoad::week)
                .date("from", "From", WeekLoad::monday)
                .whole("needed", "Needed", "min", WeekLoad::needed)
                .whole("available", "There", "min", WeekLoad::available)
                .whole("set", "In the schedule", "min", WeekLoad::set)
                .text("orders", "Orders", load -> String.join(", ", load.byOrder().keySet()))
                .of(loads);
    }

    private String name(int order) {
        return plan.orders().get(order).order().name();
    }

    private String called(int centre) {
        return plan.centres().get(centre).says().english();
    }

    private OrderWork.Done done(Placed placed) {
        return plan.orders().get(placed.order()).steps().get(placed.step());
    }

    private @Nullable Part part(Placed placed) {
        return done(placed).part();
    }

    private String says(Placed placed) {
        OrderWork.Done done = done(placed);
        return done.part() != null
                ? done.part().name().english()
                : done.load() > 0 ? "Own oven, load " + done.load() + " of the order" : "The kit";
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
                        .date(Shop.startDay(plan.schedule().windows(placed.order()).latestBegin()[placed.step()][
                                placed.work()]))
                : null;
    }
}
