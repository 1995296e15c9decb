package boltlore.trades.coating.sheets;

import boltlore.report.Page;
import boltlore.report.Workbook;
import boltlore.report.WorkbookBuilder;
import boltlore.trades.coating.CureQueue;
import boltlore.trades.coating.PowderRun;

/** How each oven load of a plan may hang, drawn load by load. */
public final class HangingSheet {

    public static final String FILE = "hanging-plan";

    private HangingSheet() {}

    public static Workbook of(CoatJob job) {
        String orders = CoatSheet.orders(job.plan());
        String footer = "Hanging plan, " + orders;
        WorkbookBuilder workbook = Workbook.of(FILE, "Hanging plan")
                .about(orders)
                .by(job.workshop().name());
        CoatSheet.placed(job.plan()).ifPresent(workbook::dated);
        job.plan().runs().forEach(run -> pages(workbook, run, footer));
        if (job.plan().loads().findAny().isEmpty()) {
            workbook.page(
                    Page.named("Nothing").footer(footer).title("Hanging plan").note("Nothing is cured here."));
        }
        return workbook.build();
    }

    private static void pages(WorkbookBuilder workbook, PowderRun run, String footer) {
        for (CureQueue queue : run.queues()) {
            queue.loads().forEach(load -> workbook.page(HangingPage.of(load, queue, run, footer)));
        }
    }
}
