package boltlore.trades.coating.sheets;

import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.trades.coating.CureQueue;
import boltlore.trades.coating.OvenLoad;
import boltlore.trades.coating.PowderRun;
import boltlore.trades.coating.hanging.HangingPlan;

/** One load: how it may hang, and which piece each number stands for. */
final class HangingPage {

    private static final String PROPOSAL =
            "A proposal, seen along each rail with the door at the left. Where a piece asks for another place, hang it"
                    + " there: mass, area and hooks of the load are the limits, not the drawing.";

    private HangingPage() {}

    static PageBuilder of(OvenLoad load, CureQueue queue, PowderRun run, String footer) {
        PageBuilder page = Page.named("Load " + load.number())
                .footer(footer)
                .title("Load " + load.number() + ": " + run.powder() + ", run " + run.number())
                .note(LoadWords.window(queue) + ". Probe on " + LoadWords.probe(load) + ".");
        HangingPlan.of(load, queue.oven())
                .ifPresentOrElse(
                        plan -> drawn(page, plan),
                        () -> page.note(
                                "The rails of " + queue.oven().says() + " are not known, so nothing is drawn."));
        page.add(HangingTable.of(load, queue.oven()));
        CoatingCautions.on(page, CoatingCautions.AT_THE_OVEN);
        return page;
    }

    private static void drawn(PageBuilder page, HangingPlan plan) {
        if (!plan.places().isEmpty()) {
            page.note(PROPOSAL).picture(HangingDrawing.of(plan));
        }
        HangingWords.of(plan).forEach(page::note);
    }
}
