package boltlore.trades.coating.sheets;

import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Coats;
import boltlore.catalogue.Powder;
import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.OvenBatch;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/** The coats of a batch from the metal outwards: film and cure window, and the runs they are sprayed in. */
final class CoatsTable {

    private static final Column[] COLUMNS = {
        Column.text("coat", "Coat"),
        Column.text("run", "In run"),
        Column.text("powder", "Powder"),
        Column.text("says", "Kind").atMost(30),
        Column.whole("min", "Film min").in("µm"),
        Column.whole("target", "Film target").in("µm"),
        Column.whole("max", "Film max").in("µm"),
        Column.whole("metal", "Metal").in("°C"),
        Column.whole("dwell", "Dwell").in("min"),
        Column.decimal("film", "Film on parts", 3).in("kg"),
        Column.decimal("utilisation", "Powder that stays on", 0).in("%")
    };

    private CoatsTable() {}

    static TableBuilder of(OvenBatch batch, CoatPlan plan, CoatingShop shop) {
        TableBuilder table = Table.named("coats").columns(COLUMNS);
        List<Coats> coats = batch.finish().coats();
        for (int i = 0; i < coats.size(); i++) {
            RowBuilder cells = table.row().put("coat", (i + 1) + " of " + coats.size());
            fill(cells.put("run", run(batch, i + 1, plan)), coats.get(i), batch, shop);
        }
        if (coats.size() > 1) {
            BigDecimal all = coats.stream().map(batch::filmKg).reduce(BigDecimal.ZERO, BigDecimal::add);
            table.total("total", "All coats").sum("film", all);
        }
        return table;
    }

    private static String run(OvenBatch batch, int coat, CoatPlan plan) {
        return plan.runs().stream()
                .filter(run -> run.passes().stream()
                        .anyMatch(pass -> pass.batch().number() == batch.number() && pass.coat() == coat))
                .map(run -> String.valueOf(run.number()))
                .collect(Collectors.joining(", "));
    }

    private static void fill(RowBuilder cells, Coats coat, OvenBatch batch, CoatingShop shop) {
        Powder powder = shop.powders().get(coat.powder());
        window(cells, coat)
                .put("powder", coat.powder())
                .put("says", powder == null ? "" : powder.says())
                .put("film", batch.filmKg(coat))
                .put("utilisation", coat.utilisationPercent());
    }

    private static RowBuilder window(RowBuilder cells, Coats coat) {
        return cells.put("min", coat.filmMinUm())
                .put("target", coat.filmTargetUm())
                .put("max", coat.filmMaxUm())
                .put("metal", coat.cureMetalC())
                .put("dwell", coat.cureMinutes());
    }
}
