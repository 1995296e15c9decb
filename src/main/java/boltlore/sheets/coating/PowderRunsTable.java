package boltlore.sheets.coating;

import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Powder;
import boltlore.coating.CoatPlan;
import boltlore.coating.OvenBatch;
import boltlore.coating.PowderRun;
import boltlore.sheets.Column;
import boltlore.sheets.RowBuilder;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/** The powders in the order they are sprayed, so that the booth is cleaned down as seldom as can be. */
final class PowderRunsTable {

    private static final Column[] COLUMNS = {
        Column.text("run", "Run"),
        Column.text("powder", "Powder"),
        Column.text("says", "Kind").atMost(30),
        Column.text("clean-down", "Clean down first").atMost(12),
        Column.text("passes", "For").atMost(40),
        Column.decimal("issue", "Powder to issue", 3).in("kg"),
        Column.tick("cleaned", "Booth clean"),
        Column.signature("by", "Sprayed by")
    };

    private PowderRunsTable() {}

    static TableBuilder of(CoatPlan plan, CoatingShop shop) {
        TableBuilder table = Table.named("powder-runs").columns(COLUMNS);
        List<PowderRun> runs = plan.runs();
        for (int i = 0; i < runs.size(); i++) {
            PowderRun run = runs.get(i);
            fill(table.row().put("run", String.valueOf(i + 1)), run, shop).put("issue", issueKg(run, plan));
        }
        BigDecimal all = runs.stream().map(run -> issueKg(run, plan)).reduce(BigDecimal.ZERO, BigDecimal::add);
        table.total("total", "All powder").sum("issue", all);
        return table;
    }

    private static RowBuilder fill(RowBuilder cells, PowderRun run, CoatingShop shop) {
        Powder powder = shop.powders().get(run.powder());
        return cells.put("powder", run.powder())
                .put("says", powder == null ? "" : powder.says())
                .put("clean-down", run.changeOver() ? "yes" : "no, in the booth")
                .put("passes", passes(run));
    }

    private static String passes(PowderRun run) {
        return run.passes().stream()
                .map(pass -> "batch " + pass.batch() + (pass.coats() > 1 ? " coat " + pass.coat() : ""))
                .collect(Collectors.joining(", "));
    }

    private static BigDecimal issueKg(PowderRun run, CoatPlan plan) {
        return run.passes().stream()
                .map(pass -> {
                    OvenBatch batch = plan.batches().get(pass.batch() - 1);
                    return batch.issueKg(batch.finish().coats().get(pass.coat() - 1));
                })
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
