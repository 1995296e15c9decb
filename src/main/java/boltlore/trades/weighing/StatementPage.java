package boltlore.trades.weighing;

import boltlore.catalogue.Chassis;
import boltlore.catalogue.MassLimit;
import boltlore.measure.Digits;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.FindingsTable;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.KitInWork;
import boltlore.trades.KitReport;
import boltlore.trades.weighing.LimitCheck.Standing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The first page: the axle loads before and after, what the conversion changes, what was found. */
final class StatementPage {

    private static final Kind KG = Kind.decimal(1).in("kg");

    /** As road-vehicle safety ratings read it: the higher, the later a vehicle tips. */
    private static final String STEADIER = "higher is steadier";

    /**
     * A figure before and after conversion.
     *
     * @param unit empty where it is a mere number
     * @param decimals at most
     * @param limit in words, empty where there is none
     */
    private record Change(String figure, String unit, BigDecimal before, BigDecimal after, int decimals, String limit) {

        String labelled() {
            return unit.isEmpty() ? figure : figure + " (" + unit + ")";
        }

        BigDecimal rounded(BigDecimal number) {
            return new BigDecimal(Digits.upTo(number, decimals));
        }
    }

    private static final TableSpec<Change> CHANGES = TableSpec.<Change>named("changes")
            .text("figure", "Figure", 50, Change::labelled)
            .quantity("before", "Before", "", row -> row.rounded(row.before()))
            .quantity("after", "After", "", row -> row.rounded(row.after()))
            .quantity("change", "Change", "", row -> row.rounded(row.after().subtract(row.before())))
            .text("limit", "Limit", 44, Change::limit)
            .code("unit", Change::unit);

    private static final TableSpec<RuleAnswer> CONDITIONS = TableSpec.<RuleAnswer>named("conditions")
            .text("condition", "Condition", 60, row -> row.condition().says())
            .text("found", "Found", 36, RuleAnswer::found)
            .text("answer", "Answer", 22, row -> row.answer().says())
            .code("kind", RuleAnswer::subject)
            .box(Column.signature("by", "Checked by"));

    private StatementPage() {}

    static PageBuilder compose(Weighing weighing, KitInWork kit, String footer) {
        PageBuilder page = Page.named("Weights").footer(footer);
        page.title("Weight statement").add(head(weighing, kit));
        OnAxles onAxles = weighing.onAxles();
        if (onAxles != null) {
            page.heading("Axle loads").add(loads(onAxles, weighing));
            page.picture(SideView.draw(onAxles));
        }
        Growth growth = weighing.growth();
        if (growth != null) {
            page.heading("Before and after").add(changes(growth, onAxles));
            page.add(result(weighing));
        }
        if (growth != null && growth.limit() != null) {
            page.note(growth.limit().because());
        }
        if (!weighing.conditions().isEmpty()) {
            page.heading("What else the market asks").add(CONDITIONS.of(weighing.conditions()));
        }
        FindingsTable.add(
                page, kit.answered(weighing.findings()), kit.workshop().language());
        CautionNotes.always(
                page, "weight-statement", kit.workshop(), kit.workshop().language());
        return page.signatures("Checked by");
    }

    /** The loads alone, narrow enough for a terminal. */
    static TableBuilder glance(OnAxles onAxles) {
        return loads(onAxles, null);
    }

    /** Axle loads before and after, unladen and loaded, with what is left to each limit where that is wanted. */
    private static TableBuilder loads(OnAxles onAxles, @Nullable Weighing margins) {
        Chassis chassis = onAxles.chassis();
        TableSpec<CaseLoads> spec = TableSpec.<CaseLoads>named("axle-loads")
                .said("condition", "Condition", 40, row -> row.loadCase().wording());
        for (Limited limited : Limited.values()) {
            spec.decimal(
                    limited.key(),
                    limited.heading(),
                    "kg",
                    1,
                    row -> row.loads().on(limited));
            if (margins != null) {
                spec.decimal(
                        limited.key() + "-margin",
                        "Margin, " + limited.key(),
                        "kg",
                        1,
                        row -> limited.limitKg(chassis).subtract(row.loads().on(limited)));
            }
        }
        spec.percent("share", "Front share", 1, row -> row.loads().frontPercent());
        if (margins != null) {
            spec.text("remark", "Result", 24, row -> remark(row, chassis, margins));
        }
        TableBuilder table = spec.of(onAxles.cases());
        RowBuilder limits = table.total("limits", "Limits");
        Arrays.stream(Limited.values()).forEach(limited -> limits.put(limited.key(), limited.limitKg(chassis)));
        return table;
    }

    /** The worst that axles and whole vehicle come to; unladen also by the market's limit, which is for the unladen vehicle. */
    private static String remark(CaseLoads row, Chassis chassis, Weighing weighing) {
        if (row.loadCase() == LoadCase.BEFORE) {
            boolean exceeded = row.checks(chassis).anyMatch(LimitCheck::exceeded);
            return exceeded ? Standing.ABOVE.says() : "as weighed";
        }
        Growth growth = weighing.growth();
        Stream<Standing> byMarket =
                row.loadCase() == LoadCase.UNLADEN && growth != null ? Stream.of(growth.standing()) : Stream.of();
        Stream<Standing> byLimits = row.checks(chassis).map(check -> check.standing(weighing.tolerancePercent()));
        return Stream.concat(byLimits, byMarket)
                .max(Comparator.naturalOrder())
                .map(Standing::says)
                .orElse("");
    }

    /** The figures before and after conversion, each with its limit. */
    static TableBuilder changes(Growth growth, @Nullable OnAxles onAxles) {
        return CHANGES.of(list(growth, onAxles));
    }

    /** What the weighing comes to, and why the market allows no more. */
    static ParticularsBuilder facts(Weighing weighing) {
        Growth growth = weighing.growth();
        MassLimit limit = growth == null ? null : growth.limit();
        return limit == null ? result(weighing) : result(weighing).say("market-limit", "Market limit", limit.because());
    }

    private static List<Change> list(Growth growth, @Nullable OnAxles onAxles) {
        MassLimit limit = growth.limit();
        List<Change> changes = new ArrayList<>();
        changes.add(new Change(
                "Mass, unladen",
                "kg",
                growth.beforeKg(),
                growth.afterKg(),
                1,
                limit == null
                        ? ""
                        : "at most " + Digits.plain(limit.mostPercent()) + " % of the mass before conversion"));
        if (onAxles != null) {
            FrontShare share = onAxles.frontShare();
            changes.add(new Change(
                    "Front share, unladen",
                    "%",
                    onAxles.donor().frontPercent(),
                    share.percent(),
                    1,
                    "at least " + Digits.upTo(share.leastPercent(), 1) + " %, "
                            + (share.ofFamily() ? "this family's value" : "the workshop's own value")));
            changes.add(new Change(
                    "Centre of gravity behind the front axle",
                    "mm",
                    onAxles.centreBeforeMm(),
                    onAxles.centreAfterMm(),
                    0,
                    ""));
            Stream.ofNullable(onAxles.height()).flatMap(StatementPage::height).forEach(changes::add);
        }
        return changes;
    }

    private static Stream<Change> height(CentreHeight height) {
        Change above = new Change("Centre of gravity above the road", "mm", height.beforeMm(), height.afterMm(), 0, "");
        Optional<Change> stability = CentreHeight.stability(height.tracksMm(), height.beforeMm())
                .flatMap(before -> CentreHeight.stability(height.tracksMm(), height.afterMm())
                        .map(after ->
                                new Change("Static stability factor (track / 2h)", "", before, after, 2, STEADIER)));
        return Stream.concat(Stream.of(above), stability.stream());
    }

    /** Who it is for, which vehicle, and its masses in short. */
    private static ParticularsBuilder head(Weighing weighing, KitInWork kit) {
        ParticularsBuilder says = KitReport.head(kit, "weights");
        String chassisNumber = kit.order().chassis();
        if (chassisNumber.isEmpty()) {
            says.leave("chassis", "Chassis number");
        } else {
            says.say("chassis", "Chassis number", chassisNumber);
        }
        if (!kit.order().notes().isEmpty()) {
            says.say("notes", "Notes on the order", kit.order().notes());
        }
        OnAxles onAxles = weighing.onAxles();
        if (onAxles != null) {
            Chassis chassis = onAxles.chassis();
            says.say("wheelbase", "Wheelbase", Kind.whole().in("mm"), BigDecimal.valueOf(chassis.wheelbaseMm()));
            if (chassis.frontTrackMm() != null && chassis.rearTrackMm() != null) {
                says.say("track", "Track, front, rear", chassis.frontTrackMm() + ", " + chassis.rearTrackMm() + " mm");
            }
        }
        says.say("removed", "Removed", KG, weighing.removedKg()).say("added", "The kit", KG, weighing.addedKg());
        if (weighing.filmKg().signum() != 0) {
            says.say("film", "Of it, film of powder", KG, weighing.filmKg());
        }
        if (weighing.waterKg().signum() != 0) {
            says.say("water", "Of it, water of the coolant", KG, weighing.waterKg());
        }
        return weighing.extras().isEmpty() ? says : says.say("extras", "Extras", KG, weighing.extrasKg());
    }

    /** What the weighing comes to. */
    static ParticularsBuilder result(Weighing weighing) {
        ParticularsBuilder says = Particulars.named("result");
        Growth growth = weighing.growth();
        if (growth != null) {
            says.say("mass-change", "Change of mass", Kind.percent(1), growth.changePercent());
            if (growth.limit() != null) {
                says.say(
                                "mass-margin",
                                "Market limit margin",
                                KG,
                                growth.overKg().negate())
                        .say("mass-tolerance", "Tolerance", KG, growth.toleranceKg())
                        .say(
                                "mass-answer",
                                "Mass by the market limit",
                                growth.standing().says());
            }
        }
        OnAxles onAxles = weighing.onAxles();
        return onAxles == null ? says : onAxles(says, weighing, onAxles);
    }

    private static ParticularsBuilder onAxles(ParticularsBuilder says, Weighing weighing, OnAxles onAxles) {
        onAxles.checks().stream()
                .min(Comparator.comparing(LimitCheck::marginKg))
                .ifPresent(check -> says.say("least-margin", "Smallest margin", KG, check.marginKg())
                        .say(
                                "least-margin-at",
                                "Smallest margin at",
                                check.limited().heading() + ": "
                                        + check.loadCase().says()));
        weighing.battery(onAxles.chassis().wheelbaseMm())
                .map(SubSystemLoad::loads)
                .ifPresent(battery -> says.say("battery", "Battery with boxes", KG, battery.totalKg())
                        .say("battery-front", "Battery, front axle", KG, battery.frontKg())
                        .say("battery-share", "Battery, front share", Kind.percent(1), battery.frontPercent())
                        .say("battery-rear", "Battery, rear axle", KG, battery.rearKg()));
        PayloadLeft payload = onAxles.payload();
        if (payload != null) {
            says.say("payload", "Payload left", KG, payload.kg())
                    .say(
                            "payload-limit",
                            "Payload limited by",
                            payload.first().heading()
                                    + ", loaded where the luggage goes, beside driver and passengers");
        }
        CentreHeight height = onAxles.height();
        return height == null || height.unknownKg().signum() == 0
                ? says
                : says.say("height-unknown", "Height not known", KG, height.unknownKg());
    }
}
