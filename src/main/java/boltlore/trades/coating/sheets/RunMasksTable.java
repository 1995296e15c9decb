package boltlore.trades.coating.sheets;

import boltlore.catalogue.CoatingShop;
import boltlore.report.Column;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.MasksToFetch;
import boltlore.trades.coating.PowderRun;
import java.math.BigDecimal;
import java.util.List;

/** The masks to fetch for one run, to lay out before spraying and to count off again. */
final class RunMasksTable {

    private static final Column[] COLUMNS = {
        Column.text("kind", "Covers"),
        Column.text("size", "Size"),
        Column.text("mask", "Mask").atMost(44),
        Column.whole("masks", "Masks"),
        Column.whole("load", "Most in one load"),
        Column.blank("laid-out", "Laid out"),
        Column.blank("off", "Off again"),
        Column.blank("lost", "Lost")
    };

    private static final String GO_ROUND =
            "Masks that stand another cure may go round from load to load: then the most in one load will do.";

    private RunMasksTable() {}

    /** Nothing where no piece of the run is masked. */
    static void on(PageBuilder page, PowderRun run, CoatingShop shop) {
        List<MasksToFetch> masks = MasksToFetch.of(run);
        if (masks.isEmpty()) {
            return;
        }
        page.heading("Masks to fetch");
        if (run.loads().count() > 1) {
            page.note(GO_ROUND);
        }
        page.add(table(masks, shop));
    }

    private static TableBuilder table(List<MasksToFetch> masks, CoatingShop shop) {
        TableBuilder table = Table.named("masks").columns(COLUMNS);
        masks.forEach(mask -> MasksTable.fill(table.row(), mask.spots(), shop).put("load", mask.mostInOneLoad()));
        int all = masks.stream().mapToInt(mask -> mask.spots().count()).sum();
        table.total("total", "All masks").sum("masks", BigDecimal.valueOf(all));
        return table;
    }
}
