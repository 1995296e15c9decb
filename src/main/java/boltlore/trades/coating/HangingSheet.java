package boltlore.trades.coating;

import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Oven;
import boltlore.report.CautionNotes;
import boltlore.report.Heading;
import boltlore.report.Look;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** How each oven load of a plan may hang, drawn load by load. */
public final class HangingSheet {

    private static final String PROPOSAL =
            "A proposal, seen along each rail with the door at the left. Where a piece asks for another place, hang it"
                    + " there: mass, area and hooks of the load are the limits, not the drawing.";

    /** Pieces of one row by the number of their drawing. */
    private record Numbered(int number, BatchRow row, Oven oven) {

        @Nullable
        Integer size(ToIntFunction<Hung> side) {
            EnvelopeMm envelope = row.coat().envelope();
            return envelope == null
                    ? null
                    : Hung.of(envelope, oven.inside()).map(side::applyAsInt).orElse(null);
        }
    }

    private static final TableSpec<Numbered> HANGING = hanging();

    private HangingSheet() {}

    private static TableSpec<Numbered> hanging() {
        TableSpec<Numbered> table = TableSpec.<Numbered>named("hanging").whole("number", "No.", "", Numbered::number);
        CoatWords.marked(CoatWords.named(table, 30, Numbered::row), 24, Numbered::row);
        return CoatWords.counted(table, Numbered::row)
                .whole("hooks", "Hooks each", "", each -> each.row().coat().hangPoints())
                .whole("along", "Along the rail", "mm", each -> each.size(Hung::alongMm))
                .whole("across", "Across", "mm", each -> each.size(Hung::acrossMm))
                .whole("down", "Down", "mm", each -> each.size(Hung::downMm));
    }

    public static Report compose(CoatJob job) {
        CoatPlan plan = job.plan();
        String footer = "Hanging plan, " + CoatSheet.orders(plan);
        ReportBuilder report = CoatSheet.begun("hanging-plan", "Hanging plan", job);
        long loads = plan.loads().count();
        report.glance(new Heading("Hanging plan: " + CoatWords.count(loads, "oven load", "oven loads"), Look.HEADING));
        plan.runs()
                .forEach(run -> run.queues()
                        .forEach(queue -> queue.loads()
                                .forEach(load ->
                                        report.page(page(load, queue, run, job).footer(footer)))));
        if (loads == 0) {
            report.page(
                    Page.named("Nothing").footer(footer).title("Hanging plan").note("Nothing is cured here."));
        }
        return report.build();
    }

    private static PageBuilder page(OvenLoad load, CureQueue queue, PowderRun run, CoatJob job) {
        PageBuilder page = Page.named("Load " + load.number())
                .title("Load " + load.number() + ": " + run.powder() + ", run " + run.number())
                .note(RunPage.window(queue) + ". Thermocouple on " + RunPage.probe(load) + ".");
        HangingPlan.of(load, queue.oven())
                .ifPresentOrElse(
                        plan -> drawn(page, plan),
                        () -> page.note(
                                "The rails of " + queue.oven().says() + " are not known, so nothing is drawn."));
        TableBuilder table = HANGING.empty().about("load", load.number());
        for (int i = 0; i < load.rows().size(); i++) {
            HANGING.add(table, "", new Numbered(i + 1, load.rows().get(i), queue.oven()));
        }
        CautionNotes.always(page.add(table), "coating-oven", job.workshop(), "en");
        return page;
    }

    /** The drawing, and what it leaves open. */
    private static void drawn(PageBuilder page, HangingPlan plan) {
        if (!plan.places().isEmpty()) {
            page.note(PROPOSAL).picture(HangingDrawing.draw(plan));
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
}
