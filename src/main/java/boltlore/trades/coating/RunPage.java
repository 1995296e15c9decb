package boltlore.trades.coating;

import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Powder;
import boltlore.measure.Digits;
import boltlore.report.CautionNotes;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** One run for booth and oven: powder, masks to fetch, loads with what is written down of each cure. */
final class RunPage {

    private static final int MIXED_ONE_BY_ONE = 4;

    /** A load where it is cured. */
    private record Cured(OvenLoad load, CureQueue queue) {}

    private static final String PROPOSAL =
            "Drawn as a proposal, door at the left: mass, area and hooks of the load are the limits, not the drawing.";

    /** Pieces of one row in a load, by the number of their drawing. */
    private record Hanging(int number, CureQueue queue, BatchRow row) {

        @Nullable
        Integer size(ToIntFunction<Hung> side) {
            EnvelopeMm envelope = row.coat().envelope();
            return envelope == null
                    ? null
                    : Hung.of(envelope, queue.oven().inside())
                            .map(side::applyAsInt)
                            .orElse(null);
        }
    }

    private static final TableSpec<String> BOOTH = TableSpec.<String>named("booth")
            .text("powder", "Powder", powder -> powder)
            .box(Column.blank("lot", "Lot").atMost(20))
            .box(Column.blank("issued", "Issued").in("kg"))
            .box(Column.signature("by", "Sprayed by"))
            .box(Column.blank("probe", "Thermocouple number"));

    private static final TableSpec<Hanging> PIECES = pieces();

    private final PowderRun run;
    private final CoatJob job;
    private final String footer;

    private RunPage(PowderRun run, CoatJob job, String footer) {
        this.run = run;
        this.job = job;
        this.footer = footer;
    }

    /** Run after run, as the booth sprays them; empty where nothing hangs. */
    static Optional<PageBuilder> all(CoatJob job, String footer) {
        List<PowderRun> runs = job.plan().runs().stream()
                .filter(run -> run.loads().findAny().isPresent())
                .toList();
        if (runs.isEmpty()) {
            return Optional.empty();
        }
        PageBuilder page = Page.named("Runs").footer(footer).title("Runs: spray, hang and cure");
        CautionNotes.always(page, "coating-oven", job.workshop(), job.workshop().language());
        runs.forEach(run -> page.also(new RunPage(run, job, footer).run()));
        return Optional.of(page);
    }

    private PageBuilder run() {
        Powder powder = job.shop().powders().get(run.powder());
        PowderUse use = PowderUse.of(run, job.workshop());
        PageBuilder page = page(powder == null ? "" : ", " + powder.says())
                .add(particulars(use))
                .add(booth());
        List<MasksToFetch> masks = MasksToFetch.of(run);
        if (!masks.isEmpty()) {
            page.heading("Masks to fetch");
            if (run.loads().count() > 1) {
                page.note("Masks that stand another cure may go round from load to load: then the most in one load will"
                        + " do.");
            }
            page.add(MasksTable.compose(run, masks, job.shop()));
        }
        page.heading("Oven loads");
        run.queues().forEach(queue -> page.note(limits(queue)));
        mixed().forEach(page::note);
        page.add(loads(use)).note(PROPOSAL);
        run.queues().forEach(queue -> queue.loads().forEach(load -> hanging(page, queue, load)));
        return page;
    }

    private PageBuilder page(String about) {
        return Page.named("Run " + run.number())
                .footer(footer)
                .title("Run " + run.number() + ": " + run.powder() + about);
    }

    private ParticularsBuilder particulars(PowderUse use) {
        return Particulars.named("run-" + run.number())
                .say("clean-down", "Colour change", PowdersPage.cleanDown(run, job))
                .say("overspray", "Overspray", PowdersPage.overspray(use, run, job.shop()))
                .say("issue", "Powder to issue, kg", Kind.decimal(3), use.issueKg());
    }

    private TableBuilder booth() {
        return BOOTH.of(List.of(run.powder())).about("run", run.number());
    }

    private TableBuilder loads(PowderUse use) {
        Timetable timetable = job.timetable();
        TableSpec<Cured> spec = TableSpec.<Cured>named("loads")
                .text("load", "Load", cured -> String.valueOf(cured.load().number()))
                .text("passes", "Of", 16, RunPage::passes)
                .whole("pieces", "Pieces", "", cured -> cured.load().pieces())
                .decimal(
                        "mass",
                        "Load mass with jigs",
                        "kg",
                        1,
                        cured -> cured.load().size().kg())
                .decimal("issue", "Powder", "kg", 3, cured -> use.issueKg(cured.load(), cured.queue()))
                .text("probe-on", "Thermocouple on", 16, cured -> probe(cured.load()));
        if (timetable.known()) {
            spec.text("day", "Day", cured -> job.day(timetable.day(cured.load().number())));
        }
        spec.box(Column.blank("in", "In at"))
                .box(Column.blank("dwell", "Dwell from"))
                .box(Column.blank("out", "Out at"))
                .box(Column.blank("probe", "Peak metal temperature").in("°C"))
                .box(Column.signature("by", "Cured by"))
                .besideThePaper()
                .decimal("area", "Area", "m²", 2, cured -> cured.load().size().areaM2())
                .whole("hooks", "Hooks", "", cured -> cured.load().size().hooks())
                .decimal(
                        "volume", "Volume", "l", 0, cured -> cured.load().size().litres());
        TableBuilder table = spec.empty().about("run", run.number());
        for (int i = 0; i < run.queues().size(); i++) {
            CureQueue queue = run.queues().get(i);
            table.group("queue-" + (i + 1), window(queue));
            queue.loads().forEach(load -> spec.add(table, "", new Cured(load, queue)));
        }
        return table;
    }

    private static String passes(Cured cured) {
        return cured.load().rows().stream()
                .map(row -> cured.queue().passOf(row).says())
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
    }

    private static TableSpec<Hanging> pieces() {
        TableSpec<Hanging> pieces = TableSpec.<Hanging>named("load-pieces").whole("number", "No.", "", Hanging::number);
        CoatWords.named(pieces, 30, Hanging::row)
                .text(
                        "pass",
                        "Of",
                        hanging -> hanging.queue().passOf(hanging.row()).says());
        CoatWords.marked(pieces, 18, Hanging::row);
        CoatWords.counted(pieces, Hanging::row)
                .whole(
                        "hooks",
                        "Hooks each",
                        "",
                        hanging -> hanging.row().coat().hangPoints())
                .box(Column.tick("hung", "Hung"))
                .besideThePaper();
        return CoatWords.measured(
                        pieces, "section", "Section thin–thick", "mm", 10, hanging -> CoatWords.section(hanging.row()))
                .whole("along", "Along the rail", "mm", each -> each.size(Hung::alongMm))
                .whole("across", "Across", "mm", each -> each.size(Hung::acrossMm))
                .whole("down", "Down", "mm", each -> each.size(Hung::downMm));
    }

    /** One load: how it may hang, drawn where the rails are known, and its pieces by the numbers in the drawing. */
    private void hanging(PageBuilder page, CureQueue queue, OvenLoad load) {
        page.heading("Load " + load.number() + ", " + CoatWords.count(load.pieces(), "piece", "pieces"));
        HangingPlan.of(load, queue.oven())
                .ifPresentOrElse(
                        plan -> drawn(page, plan),
                        () -> page.note(
                                "The rails of " + queue.oven().says() + " are not known, so nothing is drawn."));
        TableBuilder table = PIECES.empty().about("run", run.number()).about("load", load.number());
        for (int i = 0; i < load.rows().size(); i++) {
            PIECES.add(table, "", new Hanging(i + 1, queue, load.rows().get(i)));
        }
        page.add(table);
    }

    /** The drawing, and what it leaves open. */
    private static void drawn(PageBuilder page, HangingPlan plan) {
        if (!plan.places().isEmpty()) {
            page.picture(HangingDrawing.draw(plan));
        }
        if (!plan.noRoom().isEmpty()) {
            page.note("Not drawn, because no room was found beside or below the others: " + numbers(plan.noRoom())
                    + ". Hang them where there is room; what does not go in waits for the next load.");
        }
        if (!plan.unsized().isEmpty()) {
            String parts = plan.unsized().stream()
                    .map(row -> row.part().number().text())
                    .collect(Collectors.joining(", "));
            page.note("Not drawn, because the size is not known: " + parts + ". Measure them.");
        }
    }

    /** 'No. 3 (2 pieces), No. 5 (1 piece)'. */
    private static String numbers(List<HungPiece> pieces) {
        return pieces.stream()
                .map(HungPiece::number)
                .distinct()
                .map(number -> "No. " + number + " (" + count(number, pieces) + ")")
                .collect(Collectors.joining(", "));
    }

    private static String count(int number, List<HungPiece> pieces) {
        long count = pieces.stream().filter(piece -> piece.number() == number).count();
        return CoatWords.count(count, "piece", "pieces");
    }

    /** '180 °C metal, 15 min, in Box oven, gas'. */
    static String window(CureQueue queue) {
        return queue.cureMetalC() + " °C metal, " + queue.minutes() + " min, in "
                + queue.oven().says();
    }

    /** 'PV-CR-1, 8 mm'. */
    static String probe(OvenLoad load) {
        BatchRow thick = load.thickest();
        return thick.part().number() + ", " + Digits.plain(thick.coat().thickestMm()) + " mm";
    }

    /** What the oven takes at once, and how many loads these pieces need. */
    private static String limits(CureQueue queue) {
        LoadSize limits = LoadSize.limits(queue.oven());
        boolean fewest = queue.loads().size() == queue.leastLoads();
        return queue.oven().says() + " takes " + Digits.plain(limits.areaM2()) + " m², "
                + Digits.plain(limits.kg()) + " kg with jigs (" + Digits.plain(LoadSize.HANGING_KG)
                + " kg a hang point), " + limits.hooks() + " hooks and "
                + limits.litres().setScale(0, RoundingMode.HALF_UP) + " l of hung parts ("
                + Digits.plain(queue.oven().fillPercent()) + " % of its inside)" + sections(queue) + ". At "
                + queue.cureMetalC() + " °C, " + queue.minutes() + " min these pieces need at least "
                + CoatWords.count(queue.leastLoads(), "load", "loads") + "; planned: "
                + queue.loads().size() + ". "
                + (fewest ? "No plan has fewer." : "The best plan known; fewer are not ruled out.");
    }

    private static String sections(CureQueue queue) {
        return queue.oven().sectionRatio() == null
                ? ""
                : "; pieces whose thickest sections differ by more than "
                        + Digits.plain(queue.oven().sectionRatio()) + " times hang apart";
    }

    /** Words where thin and thick sections share a load, one for each or one for all. */
    private List<String> mixed() {
        List<OvenLoad> mixed = run.loads().filter(OvenLoad::mixesSections).toList();
        if (mixed.size() <= MIXED_ONE_BY_ONE) {
            return mixed.stream().map(RunPage::mixed).toList();
        }
        String loads = mixed.stream().map(load -> String.valueOf(load.number())).collect(Collectors.joining(", "));
        return List.of("Loads " + loads + ": thin and thick sections do not reach metal temperature together. Put the"
                + " thermocouple where the table says and count the minutes from there; check the thin ones for"
                + " over-bake.");
    }

    private static String mixed(OvenLoad load) {
        BatchRow thin = load.thinnest();
        BatchRow thick = load.thickest();
        String thickMm = Digits.plain(thick.coat().thickestMm()) + " mm";
        return "Load " + load.number() + ": " + Digits.plain(thin.coat().thinnestMm()) + " mm ("
                + thin.part().number() + ") and " + thickMm + " ("
                + thick.part().number()
                + ") do not reach metal temperature together. Put the thermocouple on the " + thickMm
                + " and count the minutes from there; check the thin ones for over-bake.";
    }
}
