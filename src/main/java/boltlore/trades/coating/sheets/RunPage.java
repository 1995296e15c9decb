package boltlore.trades.coating.sheets;

import boltlore.catalogue.Powder;
import boltlore.report.Kind;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.WorkbookBuilder;
import boltlore.trades.coating.PowderRun;
import boltlore.trades.coating.PowderUse;

/** One run for booth and oven: powder, masks to fetch, loads with what is written down of each cure. */
final class RunPage {

    private RunPage() {}

    static void on(WorkbookBuilder workbook, PowderRun run, CoatJob job, String footer) {
        if (run.loads().count() == 0) {
            return;
        }
        workbook.page(run(run, job, footer));
        if (run.loads().count() > 1 || run.passes().size() > 1) {
            workbook.page(
                    page(run, " hung", ", what hangs in which load", footer).add(LoadPiecesTable.of(run)));
        }
    }

    private static PageBuilder run(PowderRun run, CoatJob job, String footer) {
        Powder powder = job.shop().powders().get(run.powder());
        PowderUse use = PowderUse.of(run, job.workshop());
        PageBuilder page = page(run, "", powder == null ? "" : ", " + powder.says(), footer);
        page.add(particulars(run, use, job));
        CoatingCautions.on(page, CoatingCautions.AT_THE_OVEN);
        RunMasksTable.on(page, run, job.shop());
        page.heading("Oven loads");
        run.queues().forEach(queue -> page.note(LoadWords.limits(queue)));
        LoadWords.mixed(run).forEach(page::note);
        return page.add(LoadsTable.of(run, use, job));
    }

    private static PageBuilder page(PowderRun run, String name, String about, String footer) {
        String title = "Run " + run.number() + ": " + run.powder() + about;
        return Page.named("Run " + run.number() + name)
                .landscape()
                .footer(footer)
                .title(title);
    }

    private static ParticularsBuilder particulars(PowderRun run, PowderUse use, CoatJob job) {
        return Particulars.named("run")
                .say("clean-down", "Clean down first", RunWords.cleanDown(run, job))
                .say("overspray", "Overspray", OversprayWords.decision(use, run, job.shop()))
                .say("issue", "Powder to issue, kg", Kind.decimal(3), use.issueKg())
                .leave("lot", "Powder lot")
                .leave("issued", "Issued, kg")
                .leave("by", "Sprayed by")
                .leave("probe", "Metal probe number");
    }
}
