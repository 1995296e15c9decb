package boltlore.trades.coating.sheets;

import boltlore.catalogue.Powder;
import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.ChangeOver;
import boltlore.trades.coating.Pass;
import boltlore.trades.coating.PowderRun;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The powders in the order they are sprayed, with each cleaning of the booth and what it costs. */
final class PowderRunsTable {

    private PowderRunsTable() {}

    static TableBuilder of(CoatJob job) {
        TableBuilder table =
                Table.named("powder-runs").columns(columns(job.workshop().currency()));
        PowdersPage.inRounds(table, job, (rows, run) -> fill(rows.row(), run, job));
        totals(table.total("total", "All runs"), job);
        return table;
    }

    private static Column[] columns(Currency currency) {
        return new Column[] {
            Column.text("run", "Run"),
            Column.text("powder", "Powder"),
            Column.text("says", "Kind").atMost(28),
            Column.decimal("lightness", "Lightness L*", 0),
            Column.text("clean-down", "Clean down first").atMost(18),
            Column.whole("minutes", "Cleaning").in("min"),
            Column.money("cost", "Change-over", currency),
            Column.text("passes", "For").atMost(34),
            Column.whole("pieces", "Pieces"),
            Column.whole("loads", "Oven loads"),
            Column.tick("cleaned", "Booth clean"),
            Column.signature("by", "Sprayed by")
        };
    }

    private static void fill(RowBuilder cells, PowderRun run, CoatJob job) {
        cells.put("run", String.valueOf(run.number()))
                .put("powder", run.powder())
                .put("clean-down", cleanDown(run.changeOver()))
                .put("passes", passes(run))
                .put("pieces", run.pieces())
                .put("loads", run.loads().count());
        powder(cells, job.shop().powders().get(run.powder()));
        ChangeOver changeOver = run.changeOver();
        if (changeOver != null) {
            cells.put("minutes", changeOver.work().minutes()).put("cost", PlanWords.rounded(changeOver.cost(), job));
        }
    }

    private static void powder(RowBuilder cells, @Nullable Powder powder) {
        if (powder != null) {
            cells.put("says", powder.says());
        }
        if (powder != null && powder.lightness() != null) {
            cells.put("lightness", powder.lightness());
        }
    }

    private static String cleanDown(@Nullable ChangeOver changeOver) {
        if (changeOver == null) {
            return "no, in the booth";
        }
        return changeOver.toDarker() ? "yes, to darker" : "yes, to the last speck";
    }

    private static void totals(RowBuilder total, CoatJob job) {
        List<PowderRun> runs = job.plan().runs();
        total.sum("minutes", PlanWords.minutes(job))
                .sum("cost", PlanWords.cost(job))
                .sum("pieces", whole(runs.stream().mapToLong(PowderRun::pieces).sum()))
                .sum("loads", whole(runs.stream().flatMap(PowderRun::loads).count()));
    }

    private static BigDecimal whole(long number) {
        return BigDecimal.valueOf(number);
    }

    private static String passes(PowderRun run) {
        return run.passes().stream().map(PowderRunsTable::pass).collect(Collectors.joining(", "));
    }

    /** 'batch 2', 'batch 3 coat 1'. */
    static String pass(Pass pass) {
        return "batch " + pass.batch().number() + (pass.coats() > 1 ? " coat " + pass.coat() : "");
    }
}
