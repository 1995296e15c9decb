package boltlore.trades.coating.sheets;

import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.PowderRun;
import boltlore.trades.coating.PowderUse;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.function.Function;

/** How much powder each run takes, and whether its overspray is gathered. */
final class PowderUseTable {

    private PowderUseTable() {}

    static TableBuilder of(CoatJob job) {
        TableBuilder table =
                Table.named("powder-use").columns(columns(job.workshop().currency()));
        PowdersPage.inRounds(table, job, (rows, run) -> fill(rows.row(), run, job));
        table.total("total", "All powder")
                .sum("film", sum(job, PowderUse::filmKg))
                .sum("issue", sum(job, PowderUse::issueKg));
        return table;
    }

    private static Column[] columns(Currency currency) {
        return new Column[] {
            Column.text("run", "Run"),
            Column.text("powder", "Powder"),
            Column.decimal("film", "Film on parts", 3).in("kg"),
            Column.decimal("waste", "Sprayed to waste", 3).in("kg"),
            Column.decimal("gathered", "Overspray gathered", 3).in("kg"),
            Column.money("saved", "Powder saved", currency),
            Column.money("cleaning", "Cleaning after", currency),
            Column.text("decision", "Overspray").atMost(44),
            Column.decimal("issue", "Powder to issue", 3).in("kg"),
            Column.blank("issued", "Issued").in("kg")
        };
    }

    private static BigDecimal sum(CoatJob job, Function<PowderUse, BigDecimal> kg) {
        return job.plan().runs().stream()
                .map(run -> kg.apply(PowderUse.of(run, job.workshop())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static void fill(RowBuilder cells, PowderRun run, CoatJob job) {
        PowderUse use = PowderUse.of(run, job.workshop());
        cells.put("run", String.valueOf(run.number()))
                .put("powder", run.powder())
                .put("film", use.filmKg())
                .put("waste", use.wasteKg())
                .put("decision", OversprayWords.decision(use, run, job.shop()))
                .put("issue", use.issueKg());
        if (use.overspray() == PowderUse.Overspray.GATHERED || use.overspray() == PowderUse.Overspray.WASTE) {
            cells.put("gathered", use.gatheredKg())
                    .put("saved", PlanWords.rounded(use.saved(), job))
                    .put("cleaning", PlanWords.rounded(use.cleaning(), job));
        }
    }
}
