package boltlore.trades.scheduling;

import boltlore.measure.Digits;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What is asked of each work centre week by week, drawn and in figures. */
final class LoadPages {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

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

    LoadPages(WorkPlan plan, List<WeekLoad> loads, String footer) {
        this.plan = plan;
        this.loads = loads;
        this.footer = footer;
    }

    /** A work centre in the workshop's language. */
    static String called(WorkPlan plan, int centre) {
        return plan.orders().get(0).kit().says(plan.centres().get(centre).says());
    }

    private static List<Centre> centres(WorkPlan plan, List<WeekLoad> loads) {
        List<Centre> all = new ArrayList<>();
        WeekLoad.byCentre(loads).forEach((centre, weeks) -> all.add(new Centre(called(plan, centre), weeks)));
        return all;
    }

    /** The centre of which the largest share of its hours is needed: 'Welding, 83.2 % of its hours in 30 weeks'. */
    String fullest() {
        return centres(plan, loads).stream()
                .max(Comparator.comparing(Centre::share))
                .map(centre -> centre.says() + ", " + Digits.plain(centre.share()) + " % of its hours in "
                        + centre.weeks().size() + " weeks")
                .orElse("none has hours");
    }

    PageBuilder load() {
        PageBuilder page = Page.named("Load").landscape().footer(footer).title("Load of the work centres by week");
        page.note(
                "Outlined: hours that are needed in the week for orders to be in time, whatever the centre can do. Dashed:"
                        + " hours that the centre has. Hatched, with the hours above: too few. Of an order without a date the work"
                        + " stands where it can be done first, and what should have been done before this plan in its first days.");
        for (Centre centre : centres(plan, loads)) {
            page.picture(LoadDrawing.draw(centre.says(), centre.weeks()));
        }
        if (loads.size() > LoadDrawing.MOST_WEEKS * plan.centres().size()) {
            page.note("Drawn are the first " + LoadDrawing.MOST_WEEKS + " weeks; the table has all.");
        }
        return page;
    }

    PageBuilder inFigures() {
        return Page.named("Load in figures")
                .landscape()
                .footer(footer)
                .title("Hours by week: what is needed, and where that is too much, > what there is")
                .add(weekByWeek());
    }

    private TableBuilder weekByWeek() {
        Map<LocalDate, List<WeekLoad>> byWeek = new TreeMap<>();
        loads.forEach(load ->
                byWeek.computeIfAbsent(load.monday(), none -> new ArrayList<>()).add(load));
        TableSpec<List<WeekLoad>> table = TableSpec.<List<WeekLoad>>named("load")
                .text("week", "Week", week -> week.get(0).week())
                .date("from", "From", week -> week.get(0).monday());
        for (int centre = 0; centre < plan.centres().size(); centre++) {
            int place = centre;
            table.text(plan.centres().get(centre).name(), called(plan, centre), 13, week -> shown(week.get(place)));
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

    /** What all weeks come to. */
    TableBuilder centres() {
        return TableSpec.<Centre>named("centres")
                .text("centre", "Work centre", Centre::says)
                .decimal("needed", "Needed", "h", 1, centre -> SchedulingFindings.hours(centre.needed()))
                .decimal("available", "There", "h", 1, centre -> SchedulingFindings.hours(centre.available()))
                .percent("share", "Load", 1, Centre::share)
                .whole("over", "Weeks with too few hours", "", Centre::overWeeks)
                .of(centres(plan, loads));
    }

    /** The load for programs. */
    TableBuilder weeks() {
        return TableSpec.<WeekLoad>named("weeks")
                .said(
                        "centre",
                        "Work centre",
                        Column.USUAL_WIDEST,
                        load -> plan.centres().get(load.centre()).says())
                .code("centre-code", load -> plan.centres().get(load.centre()).name())
                .text("week", "Week", WeekLoad::week)
                .date("from", "From", WeekLoad::monday)
                .whole("needed", "Needed", "min", WeekLoad::needed)
                .whole("available", "There", "min", WeekLoad::available)
                .whole("set", "In the schedule", "min", WeekLoad::set)
                .text(
                        "orders",
                        "Orders",
                        load -> String.join(", ", load.byOrder().keySet()))
                .of(loads);
    }
}
