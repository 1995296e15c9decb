package boltlore.trades.braking;

import boltlore.catalogue.Braking.Vacuum;
import boltlore.report.CautionNotes;
import boltlore.report.FindingsTable;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.KitInWork;
import boltlore.trades.KitReport;
import boltlore.trades.braking.BrakingTrade.Judged;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.function.ToDoubleBiFunction;
import org.jspecify.annotations.Nullable;

/** The pages: which axle locks first, and the vacuum application by application; then axle by axle at some rates. */
final class BrakingPage {

    private static final double[] RATES = {0.15, 0.3, 0.5, 0.6, 0.8};
    private static final double GRIP = 0.8;
    private static final double PERCENT = 100;
    private static final double NEWTON_IN_KN = 1000;

    private static final String RULE =
            "The front axle must utilise more adhesion than the rear one, so that it locks first: Directive"
                    + " 71/320/EEC, Annex II, Appendix, 3.1.1 (as of 1 January 2007), braking rates of 0.15 to 0.8 for M1, to 0.5 for"
                    + " N1. Without anti-lock system. First estimates for the engineer's judgement; measurement on a test bench"
                    + " and by a brake test decides.";

    private static final String FORMULAS =
            "Braking rate: deceleration / 9.81 m/s². Adhesion utilised: braking force / load of an axle while braking"
                    + " (Directive 71/320/EEC, Annex II, Appendix, 3.1.3).";

    /** One load case at one braking rate. */
    private record Rated(AxleBalance balance, double rate) {

        BigDecimal of(ToDoubleBiFunction<AxleBalance, Double> figure) {
            return number(figure.applyAsDouble(balance, rate));
        }

        /** An axle that lifts off asks for no number. */
        @Nullable
        BigDecimal grip(ToDoubleBiFunction<AxleBalance, Double> figure) {
            return Double.isInfinite(figure.applyAsDouble(balance, rate)) ? null : of(figure);
        }
    }

    private record Applied(int number, double kpa, boolean helps) {}

    private static final TableSpec<Rated> RATED = TableSpec.<Rated>named("rates")
            .decimal("rate", "Braking rate", "", 2, row -> number(row.rate()))
            .decimal("front", "Front axle", "kg", 0, row -> row.of(AxleBalance::frontLoad))
            .decimal("rear", "Rear axle", "kg", 0, row -> row.of(AxleBalance::rearLoad))
            .percent("ideal", "Ideal front share", 1, row -> row.of((each, at) -> PERCENT * each.idealFront(at)))
            .percent("fitted", "Fitted front share", 1, row -> row.of((each, at) -> PERCENT * each.fittedFront(at)))
            .decimal("gripFront", "Adhesion utilised, front", "", 2, row -> row.grip(AxleBalance::front))
            .decimal("gripRear", "Adhesion utilised, rear", "", 2, row -> row.grip(AxleBalance::rear));

    private static final TableSpec<Applied> APPLIED = TableSpec.<Applied>named("applications")
            .whole("application", "Application", "", Applied::number)
            .decimal("depression", "Depression at its start", "kPa", 1, row -> number(row.kpa()))
            .text("helps", "Assists enough", row -> row.helps() ? "yes" : "no");

    private BrakingPage() {}

    /** With the adhesion at each braking rate, where the axles' brakes are known. */
    static PageBuilder whole(Judged judged, KitInWork kit, String footer) {
        PageBuilder page = compose(judged, kit, footer);
        return judged.balances().isEmpty() ? page : page.also(byRate(judged, footer));
    }

    static PageBuilder compose(Judged judged, KitInWork kit, String footer) {
        PageBuilder page = Page.named("Braking").footer(footer);
        page.title("Braking").add(KitReport.head(kit, "braking-head"));
        if (!judged.balances().isEmpty()) {
            page.heading("Which axle locks first").add(cases(judged)).note(RULE).note(drive(judged));
        }
        VacuumReserve reserve = judged.reserve();
        if (reserve != null) {
            vacuum(page, reserve);
        }
        FindingsTable.add(page, kit.answered(judged.findings()), kit.workshop().language());
        CautionNotes.always(page, "braking", kit.workshop(), kit.workshop().language());
        return page.signatures("Checked by");
    }

    /** A page of its own, so that its headings, repeated where it is long, stand above no other table's rows. */
    static PageBuilder byRate(Judged judged, String footer) {
        return Page.named("By braking rate")
                .footer(footer)
                .title("Adhesion utilised, by braking rate")
                .add(rates(judged))
                .note(FORMULAS)
                .note("Brakes: " + judged.balances().get(0).brakes().source());
    }

    static TableBuilder cases(Judged judged) {
        return TableSpec.<AxleBalance>named("cases")
                .said("case", "Condition", 40, row -> row.loadCase().wording())
                .decimal("front", "Front axle", "kg", 0, row -> number(row.frontKg()))
                .decimal("rear", "Rear axle", "kg", 0, row -> number(row.rearKg()))
                .decimal("height", "h / wheelbase", "", 3, row -> number(row.heightOverBase()))
                .decimal("rate", "Locks at, on dry road", "", 2, row -> number(row.rateOn(GRIP)))
                .text("first", "Locks first", 20, BrakingPage::first)
                .text("recuperating", "With recuperation", 20, row -> first(row.with(judged.drive())))
                .of(judged.balances());
    }

    private static String drive(Judged judged) {
        double newton = judged.drive().newton();
        return newton == 0
                ? "Recuperation: the catalogue names none; where the drive unit brakes its axle, the order of locking changes."
                : "Recuperation: " + BigDecimal.valueOf(newton / NEWTON_IN_KN).setScale(2, RoundingMode.HALF_UP)
                        + " kN on the " + judged.drive().axle().name().toLowerCase(Locale.ROOT)
                        + " axle at most, on top of the brakes as soon as they are applied.";
    }

    private static String first(AxleBalance balance) {
        double rate = balance.rearFirst();
        return Double.isNaN(rate)
                ? "front axle"
                : "rear axle from " + BigDecimal.valueOf(rate).setScale(2, RoundingMode.HALF_UP);
    }

    private static TableBuilder rates(Judged judged) {
        TableBuilder table = RATED.empty().inPairs();
        for (AxleBalance balance : judged.balances()) {
            table.group(balance.loadCase().name(), balance.loadCase().says());
            for (double rate : RATES) {
                if (rate <= balance.lastRate()) {
                    RATED.add(table, "", new Rated(balance, rate));
                }
            }
        }
        return table;
    }

    private static void vacuum(PageBuilder page, VacuumReserve reserve) {
        page.heading("Vacuum without the pump").add(facts(reserve));
        int rows = Math.max(reserve.helped(), reserve.vacuum().applications()) + 1;
        TableBuilder table = APPLIED.empty().inPairs();
        for (int i = 0; i < rows; i++) {
            APPLIED.add(table, "", new Applied(i + 1, reserve.after(i), i < reserve.helped()));
        }
        page.add(table).note("Vacuum: " + reserve.vacuum().source());
    }

    private static ParticularsBuilder facts(VacuumReserve reserve) {
        Vacuum vacuum = reserve.vacuum();
        Kind kpa = Kind.decimal(1).in("kPa");
        return Particulars.named("vacuum")
                .say("volume", "Reservoir, servo and hoses", Kind.decimal(1).in("l"), number(reserve.volumeLitres()))
                .say("least", "Least vacuum", kpa, vacuum.leastKpa())
                .say("helped", "Full applications assisted", Kind.whole(), BigDecimal.valueOf(reserve.helped()))
                .say("wanted", "At least", Kind.whole(), BigDecimal.valueOf(vacuum.applications()))
                .say("pump", "Pump, from start to stop", Kind.decimal(1).in("s"), number(reserve.pumpSeconds()));
    }

    private static BigDecimal number(double figure) {
        return BigDecimal.valueOf(figure).round(new MathContext(6));
    }
}
