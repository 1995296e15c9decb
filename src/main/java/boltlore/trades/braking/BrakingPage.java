package boltlore.trades.braking;

import boltlore.report.CautionNotes;
import boltlore.report.FindingsTable;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.KitInWork;
import boltlore.trades.KitReport;
import boltlore.trades.braking.BrakingTrade.Judged;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** The one page: axle by axle at some braking rates, and the vacuum application by application. */
final class BrakingPage {

    private static final double[] RATES = {0.15, 0.3, 0.5, 0.6, 0.8};
    private static final double GRIP = 0.8;
    private static final double PERCENT = 100;

    private static final String FORMULAS =
            "Braking rate: deceleration / 9.81 m/s². Grip asked for: braking force / load of an"
                    + " axle while braking. The front axle must ask for more than the rear one, so that it locks first: Directive"
                    + " 71/320/EEC, Annex II, Appendix, 3.1.1 (as of 1 January 2007), braking rates of 0.15 to 0.8 for M1, to 0.5 for"
                    + " N1. Without anti-lock system. First estimates for the engineer's judgement; measurement on a test bench"
                    + " and by a brake test decides.";

    private record Rated(AxleBalance balance, double rate) {}

    private record Applied(int number, double kpa, boolean helps) {}

    private BrakingPage() {}

    static PageBuilder compose(Judged judged, KitInWork kit, String footer) {
        PageBuilder page = Page.named("Braking").landscape().footer(footer);
        page.title("Braking").add(KitReport.head(kit, "braking-head"));
        if (!judged.balances().isEmpty()) {
            page.heading("Which axle locks first")
                    .add(cases(judged))
                    .add(rates(judged))
                    .note(FORMULAS);
            page.note("Brakes: " + judged.balances().get(0).brakes().source());
        }
        VacuumReserve reserve = judged.reserve();
        if (reserve != null) {
            vacuum(page, reserve);
        }
        FindingsTable.add(page, judged.findings(), "en");
        CautionNotes.always(page, "braking", kit.workshop(), "en");
        return page.signatures("Checked by");
    }

    static TableBuilder cases(Judged judged) {
        return TableSpec.<AxleBalance>named("cases")
                .text("case", "Condition", 40, row -> row.loadCase().says())
                .decimal("front", "Front axle", "kg", 0, row -> number(row.frontKg()))
                .decimal("rear", "Rear axle", "kg", 0, row -> number(row.rearKg()))
                .decimal("height", "h / wheelbase", "", 3, row -> number(row.heightOverBase()))
                .decimal("rate", "Locks at, on dry road", "", 2, row -> number(row.rateOn(GRIP)))
                .text("first", "Locks first", 24, BrakingPage::first)
                .of(judged.balances());
    }

    private static String first(AxleBalance balance) {
        double rate = balance.rearFirst();
        return Double.isNaN(rate)
                ? "front axle"
                : "rear axle from " + BigDecimal.valueOf(rate).setScale(2, RoundingMode.HALF_UP);
    }

    private static TableBuilder rates(Judged judged) {
        TableSpec<Rated> spec = TableSpec.<Rated>named("rates")
                .decimal("rate", "Braking rate", "", 2, row -> number(row.rate()))
                .decimal(
                        "front",
                        "Front axle",
                        "kg",
                        0,
                        row -> number(row.balance().frontLoad(row.rate())))
                .decimal(
                        "rear",
                        "Rear axle",
                        "kg",
                        0,
                        row -> number(row.balance().rearLoad(row.rate())))
                .percent(
                        "ideal",
                        "Ideal front share",
                        1,
                        row -> percent(row.balance().idealFront(row.rate())))
                .percent(
                        "fitted",
                        "Fitted front share",
                        1,
                        row -> percent(row.balance().fittedFront(row.rate())))
                .decimal(
                        "gripFront",
                        "Grip asked for, front",
                        "",
                        2,
                        row -> grip(row.balance().front(row.rate())))
                .decimal(
                        "gripRear",
                        "Grip asked for, rear",
                        "",
                        2,
                        row -> grip(row.balance().rear(row.rate())));
        TableBuilder table = spec.empty();
        for (AxleBalance balance : judged.balances()) {
            table.group(balance.loadCase().name(), balance.loadCase().says());
            for (double rate : RATES) {
                if (rate <= balance.lastRate()) {
                    spec.add(table, "", new Rated(balance, rate));
                }
            }
        }
        return table;
    }

    private static void vacuum(PageBuilder page, VacuumReserve reserve) {
        page.heading("Vacuum without the pump")
                .add(Particulars.named("vacuum")
                        .say(
                                "volume",
                                "Reservoir, servo and hoses",
                                Kind.decimal(1).in("l"),
                                number(reserve.volumeLitres()))
                        .say(
                                "least",
                                "Still helps enough",
                                Kind.decimal(1).in("kPa"),
                                reserve.vacuum().leastKpa())
                        .say(
                                "helped",
                                "Full applications helped",
                                BigDecimal.valueOf(reserve.helped()).toPlainString())
                        .say(
                                "wanted",
                                "At least",
                                String.valueOf(reserve.vacuum().applications()))
                        .say(
                                "pump",
                                "Pump, from start to stop",
                                Kind.decimal(1).in("s"),
                                number(reserve.pumpSeconds())));
        int rows = Math.max(reserve.helped(), reserve.vacuum().applications()) + 1;
        TableSpec<Applied> spec = TableSpec.<Applied>named("applications")
                .whole("application", "Application", "", Applied::number)
                .decimal("depression", "Depression at its start", "kPa", 1, row -> number(row.kpa()))
                .text("helps", "Helps enough", row -> row.helps() ? "yes" : "no");
        TableBuilder table = spec.empty();
        for (int i = 0; i < rows; i++) {
            spec.add(table, "", new Applied(i + 1, reserve.after(i), i < reserve.helped()));
        }
        page.add(table).note("Vacuum: " + reserve.vacuum().source());
    }

    private static BigDecimal percent(double fraction) {
        return number(fraction * PERCENT);
    }

    /** An axle that lifts off asks for no number. */
    private static BigDecimal grip(double figure) {
        return number(Double.isInfinite(figure) ? 99 : figure);
    }

    private static BigDecimal number(double figure) {
        return BigDecimal.valueOf(figure).round(new MathContext(6));
    }
}
