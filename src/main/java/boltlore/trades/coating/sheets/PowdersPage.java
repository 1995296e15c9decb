package boltlore.trades.coating.sheets;

import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.PowderRun;
import boltlore.trades.coating.Round;
import java.util.function.BiConsumer;

/** For the booth: which powder after which, how much of it, and what becomes of overspray. */
final class PowdersPage {

    private PowdersPage() {}

    static PageBuilder of(CoatJob job, String footer) {
        PageBuilder page = Page.named("Powders").landscape().footer(footer);
        page.title("Powders in turn");
        CoatingCautions.on(page, CoatingCautions.AT_THE_BOOTH);
        page.note(PowderRunWords.of(job)).add(PowderRunsTable.of(job));
        page.heading("Powder to issue, and overspray").note(OversprayWords.rule(job));
        return page.add(PowderUseTable.of(job));
    }

    /** The runs round by round, a heading for each where there are several. */
    static void inRounds(TableBuilder table, CoatJob job, BiConsumer<TableBuilder, PowderRun> row) {
        for (Round round : job.plan().rounds()) {
            if (job.plan().rounds().size() > 1) {
                table.group("round-" + round.number(), RoundWords.of(round, job.workshop()));
            }
            round.runs().forEach(run -> row.accept(table, run));
        }
    }
}
