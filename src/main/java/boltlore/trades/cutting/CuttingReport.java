package boltlore.trades.cutting;

import boltlore.catalogue.Bending;
import boltlore.catalogue.Blank;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Material;
import boltlore.catalogue.Workshop;
import boltlore.findings.Findings;
import boltlore.measure.Digits;
import boltlore.order.Order;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.FindingsTable;
import boltlore.report.Heading;
import boltlore.report.Kind;
import boltlore.report.Look;
import boltlore.report.Note;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Picture;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.report.Words;
import boltlore.trades.cutting.CutPlan.OnHold;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The cutting list of one order, or of several that are cut together. */
final class CuttingReport {

    private static final String BENDING_FORMULA =
            "Length before bending: the legs, measured outside, and for each bend its allowance, π/180 × angle × (inside radius"
                    + " + K × thickness), in the place of two set-backs, (inside radius + thickness) × tan(angle/2). Radius and"
                    + " K are those of our own tools: bend a first-off, measure it, and say so where it differs.";

    private static final TableSpec<BlankRow> BLANKS = TableSpec.<BlankRow>named("blanks")
            .text("part", "Part", 14, row -> row.part().number().text())
            .text("revision", "Rev", row -> row.part().revision())
            .said("name", "Name", 24, row -> row.part().name())
            .text("drawing", "Drawing and issue", 12, row -> SawPage.drawing(row.part()))
            .whole("count", "Blanks", "", BlankRow::count)
            .decimal("length", "Length", "mm", 1, BlankRow::developedMm)
            .decimal("width", "Width", "mm", 1, row -> row.blank().widthMm())
            .text("legs", "Legs outside (mm), bends", 22, row -> folded(row.blank()))
            .text("orders", "For", 14, row -> String.join(", ", row.orders()))
            .box(Column.tick("cut", "Cut"))
            .box(Column.blank("first", "First-off"))
            .besideThePaper()
            .text("sheet", "Sheet", 28, row -> row.material().says())
            .decimal("radius", "Inside radius", "mm", 1, CuttingReport::radius)
            .decimal("allowance", "All allowances", "mm", 2, CuttingReport::allowances)
            .decimal("mass", "Blank", "kg", 3, BlankRow::eachKg)
            .code(
                    "bends",
                    row -> row.blank().bendsDegrees().stream()
                            .map(Digits::plain)
                            .collect(Collectors.joining(" ")));

    private static final String BOUND =
            "'Lower bound' is a cost that no way of cutting these pieces can be under; where the gap is 0, this list is proved"
                    + " to be the cheapest. Remnants at hand cost nothing here.";
    private static final String ASSUMED =
            "Lengths are over all, from long point to long point. Every bar, a remnant too, is trimmed at the head. All pieces"
                    + " of one part come off one bar, so that no part mixes heats. Slanted ends of one angle lie against each"
                    + " other, parted by one cut, where the section may be turned over; elsewhere pieces lie one behind the"
                    + " other.";
    private static final String UNDECIDED =
            "These belong to brackets that support nothing in their kit, and nobody has decided yet whether they are left out"
                    + " or kept. They are on no bar and among no blanks until this list is issued again.";
    private static final int NAMED_IN_FOOTER = 4;

    private static final TableSpec<OnHold> ON_HOLD = TableSpec.<OnHold>named("on-hold")
            .text("order", "Order", 20, OnHold::order)
            .text("part", "Part", 20, held -> held.part().number().text())
            .text("revision", "Rev", held -> held.part().revision())
            .said("name", "Name", 40, held -> held.part().name())
            .whole("count", "Parts", "", OnHold::count)
            .box(new Column("decision", "Left out or kept", Kind.blank().oneOf("Left out", "Kept")))
            .box(Column.signature("by", "Decided by"));

    private CuttingReport() {}

    static Report compose(CutPlan plan, Findings findings, Catalogue catalogue) {
        Workshop workshop = catalogue.workshop();
        String footer = "Cutting list, " + orders(plan);
        ReportBuilder report = Report.named("cutting-list", "Cutting list")
                .about(orders(plan))
                .by(workshop.name())
                .in(Words.of(workshop.language(), CuttingReport.class))
                .found(findings);
        glance(report, plan, workshop);
        // The list cannot be older than its latest order.
        plan.orders().stream()
                .map(Order::placed)
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder())
                .ifPresent(report::dated);
        PageBuilder first = overview(plan, findings, workshop, footer);
        if (!plan.materials().isEmpty()) {
            first.also(SawPage.compose(plan.materials(), workshop, footer));
        }
        RackPage.compose(plan, catalogue, footer).ifPresent(first::also);
        report.page(first);
        if (!plan.blanks().isEmpty()) {
            report.page(blanksPage(plan.blanks(), workshop, footer));
        }
        if (!plan.onHold().isEmpty()) {
            report.page(onHold(plan.onHold(), footer));
        }
        return report.build();
    }

    /** Each way of cutting in words, then all materials. */
    private static void glance(ReportBuilder report, CutPlan plan, Workshop workshop) {
        report.glance(new Heading(orders(plan), Look.TITLE));
        if (plan.materials().isEmpty()) {
            report.glance(Note.plain("", "Nothing in these orders is sawn."));
            return;
        }
        for (MaterialCuts cuts : plan.materials()) {
            report.glance(new Heading(cuts.material().says(), Look.HEADING));
            BarPatterns.group(cuts.bars())
                    .forEach(pattern -> report.glance(new Picture(BarDrawing.draw(pattern, cuts))));
        }
        report.glance(materials(plan.materials(), workshop.currency()).build());
    }

    /** Orders and their dates, cautions, all materials at a glance. */
    private static PageBuilder overview(CutPlan plan, Findings findings, Workshop workshop, String footer) {
        PageBuilder page =
                Page.named(plan.materials().isEmpty() ? "Overview" : "Saw").footer(footer);
        page.title("Cutting list").add(head(plan, workshop));
        if (plan.isEmpty()) {
            page.note("Nothing in these orders is cut.");
            FindingsTable.add(page, findings, workshop.language());
            return page;
        }
        if (!plan.materials().isEmpty()) {
            CautionNotes.always(page, "cutting-bars", workshop, workshop.language());
        }
        CautionNotes.always(page, "cutting", workshop, workshop.language());
        if (!plan.blanks().isEmpty()) {
            CautionNotes.always(page, "cutting-blanks", workshop, workshop.language());
        }
        FindingsTable.add(page, findings, workshop.language());
        if (!plan.materials().isEmpty()) {
            page.heading("Bars").add(materials(plan.materials(), workshop.currency()));
            page.note(BOUND).note(ASSUMED);
        }
        return page.signatures("Released to the saw by", "Taken over by");
    }

    private static ParticularsBuilder head(CutPlan plan, Workshop workshop) {
        ParticularsBuilder head =
                Particulars.named("orders").say("workshop", "Workshop", workshop.name() + ", " + workshop.place());
        for (Order order : plan.orders()) {
            String due = order.due() == null ? "no date set" : "due " + order.due();
            head.say("order-" + order.name(), "Order " + order.name(), due);
            if (!order.notes().isEmpty()) {
                head.say("notes-" + order.name(), "Notes on " + order.name(), order.notes());
            }
        }
        return head;
    }

    /** One row for each material: what is bought for it, what it costs, and how good the list is known to be. */
    private static TableBuilder materials(List<MaterialCuts> all, Currency currency) {
        TableSpec<MaterialCuts> spec = TableSpec.<MaterialCuts>named("materials")
                .text("material", "Material", 30, cuts -> cuts.material().says());
        spec.whole("pieces", "Pieces", "", MaterialCuts::pieces)
                .whole("remnants", "Remnants used", "", cuts -> cuts.bars().size() - cuts.bought())
                .text("bars", "Bars to buy (mm)", 18, CuttingReport::bought)
                .money("cost", "Cost", currency, MaterialCuts::cost)
                .money("lower-bound", "Lower bound", currency, MaterialCuts::atLeast)
                .percent("gap", "Gap", 1, MaterialCuts::gapPercent)
                .percent("used", "Used", 1, MaterialCuts::usedPercent)
                .decimal("kept", "Kept", "mm", 1, MaterialCuts::keptMm)
                .decimal("scrap", "Scrap", "mm", 1, MaterialCuts::scrapMm);
        TableBuilder table = spec.empty();
        all.forEach(cuts -> spec.add(table, cuts.material().name(), cuts));
        table.total("total", "All materials")
                .sum("pieces", sum(all, cuts -> BigDecimal.valueOf(cuts.pieces())))
                .sum("cost", sum(all, MaterialCuts::cost))
                .sum("lower-bound", sum(all, MaterialCuts::atLeast));
        return table;
    }

    private static BigDecimal sum(List<MaterialCuts> all, Function<MaterialCuts, BigDecimal> of) {
        return all.stream().map(of).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** '2 × 6000, 1 × 3000': the bars to buy. */
    private static String bought(MaterialCuts cuts) {
        TreeMap<BigDecimal, Long> counts = cuts.bars().stream()
                .filter(SawnBar::isBought)
                .collect(Collectors.groupingBy(
                        SawnBar::lengthMm, () -> new TreeMap<>(Comparator.reverseOrder()), Collectors.counting()));
        return counts.entrySet().stream()
                .map(entry -> entry.getValue() + " × " + Digits.plain(entry.getKey()))
                .collect(Collectors.joining(", "));
    }

    /** What is not to be cut until someone has decided about it. */
    private static PageBuilder onHold(List<OnHold> onHold, String footer) {
        PageBuilder page = Page.named("On hold").landscape().footer(footer);
        return page.title("On hold: do not cut").note(UNDECIDED).add(ON_HOLD.of(onHold));
    }

    /** 'Order BL-1001', 'Orders BL-1001, BL-1002', or how many where there are more than fit a footer. */
    private static String orders(CutPlan plan) {
        List<Order> orders = plan.orders();
        if (orders.size() > NAMED_IN_FOOTER) {
            return orders.size() + " orders, " + orders.get(0).name() + " first";
        }
        String names = orders.stream().map(Order::name).collect(Collectors.joining(", "));
        return (orders.size() == 1 ? "Order " : "Orders ") + names;
    }

    /** Sheet-metal blanks: how large they are cut before they are bent. */
    private static PageBuilder blanksPage(List<BlankRow> rows, Workshop workshop, String footer) {
        PageBuilder page = Page.named("Blanks").footer(footer).frozen(1);
        page.title("Sheet-metal blanks").note(BENDING_FORMULA);
        CautionNotes.always(page, "cutting-press", workshop, workshop.language());
        TableBuilder table = BLANKS.empty();
        rows.stream()
                .collect(Collectors.groupingBy(BlankRow::material, LinkedHashMap::new, Collectors.toList()))
                .forEach((material, blanks) -> {
                    table.group(material.name(), sheet(material));
                    blanks.forEach(blank -> BLANKS.add(table, "", blank));
                });
        return page.add(table).signatures("Cut by", "First-offs measured by");
    }

    /** 'Steel sheet S235, 2 mm · inside radius 2 mm', as all of its blanks are bent. */
    private static String sheet(Material material) {
        Bending bending = material.bending();
        return bending == null
                ? material.says()
                : material.says() + " · inside radius " + Digits.plain(bending.insideRadiusMm()) + " mm";
    }

    /** '25, 90°, 490, 90°, 25': each leg and the bend that follows it; a flat blank's one length says nothing new. */
    static String folded(Blank blank) {
        List<String> says = new ArrayList<>();
        for (int i = 0; i < blank.legsMm().size(); i++) {
            says.add(Digits.plain(blank.legsMm().get(i)));
            if (i < blank.bendsDegrees().size()) {
                says.add(Digits.plain(blank.bendsDegrees().get(i)) + "°");
            }
        }
        return says.size() == 1 ? "flat" : String.join(" – ", says);
    }

    private static BigDecimal radius(BlankRow row) {
        Bending bending = row.material().bending();
        return bending == null ? BigDecimal.ZERO : bending.insideRadiusMm();
    }

    private static BigDecimal allowances(BlankRow row) {
        Bending bending = row.material().bending();
        return row.blank().bendsDegrees().stream()
                .map(degrees -> bending == null ? BigDecimal.ZERO : bending.allowanceMm(degrees, row.thicknessMm()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
