package boltlore.sheets.coating;

import boltlore.coating.PowderRun;
import boltlore.coating.PowderUse;
import boltlore.sheets.Column;
import boltlore.sheets.RowBuilder;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;
import java.math.BigDecimal;

/** How much powder each run takes, and whether its overspray is gathered. */
final class PowderUseTable {

    private PowderUseTable() {}

    static TableBuilder of(CoatJob job) {
        TableBuilder table = Table.named("powder-use")
                .columns(
                        Column.text("run", "Run"),
                        Column.text("powder", "Powder"),
                        Column.decimal("film", "Film on parts", 3).in("kg"),
                        Column.decimal("waste", "Sprayed to waste", 3).in("kg"),
                        Column.decimal("gathered", "Overspray gathered", 3).in("kg"),
                        Column.money("saved", "Powder saved", job.workshop().currency()),
                        Column.money(
                                "cleaning", "Cleaning after", job.workshop().currency()),
                        Column.text("decision", "Overspray").atMost(44),
                        Column.decimal("issue", "Powder to issue", 3).in("kg"),
                        Column.blank("issued", "Issued").in("kg"));
        PowdersPage.inRounds(table, job, (rows, run) -> fill(rows.row(), run, job));
        BigDecimal film = BigDecimal.ZERO;
        BigDecimal issue = BigDecimal.ZERO;
        for (PowderRun run : job.plan().runs()) {
            PowderUse use = PowderUse.of(run, job.workshop());
            film = film.add(use.filmKg());
            issue = issue.add(use.issueKg());
        }
        table.total("total", "All powder").sum("film", film).sum("issue", issue);
        return table;
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
