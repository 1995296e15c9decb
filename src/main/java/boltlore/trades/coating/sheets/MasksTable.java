package boltlore.trades.coating.sheets;

import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Mask;
import boltlore.report.Column;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.BareSpots;
import boltlore.trades.coating.BatchRow;
import java.math.BigDecimal;
import java.util.List;

/** The masks of a batch by kind and size, to lay out before spraying and to count off again. */
final class MasksTable {

    private static final Column[] COLUMNS = {
        Column.text("kind", "Covers"),
        Column.text("size", "Size"),
        Column.text("mask", "Mask").atMost(44),
        Column.whole("masks", "Masks"),
        Column.blank("laid-out", "Laid out"),
        Column.blank("off", "Off again"),
        Column.blank("lost", "Lost")
    };

    private static final String NOT_HELD = "none of that size is held: ask before spraying";

    private MasksTable() {}

    /** Nothing where no piece of the rows is masked. */
    static void on(PageBuilder page, List<BatchRow> rows, CoatingShop shop) {
        List<BareSpots> masked =
                BareSpots.of(rows).stream().filter(BareSpots::masked).toList();
        if (masked.isEmpty()) {
            return;
        }
        TableBuilder table = Table.named("masks").columns(COLUMNS);
        masked.forEach(spots -> fill(table.row(), spots, shop));
        int all = masked.stream().mapToInt(BareSpots::count).sum();
        table.total("total", "All masks").sum("masks", BigDecimal.valueOf(all));
        page.heading("Masks").add(table);
    }

    static RowBuilder fill(RowBuilder cells, BareSpots spots, CoatingShop shop) {
        return cells.put("kind", CoatWords.kind(spots.kind()))
                .put("size", spots.kind() == Feature.Kind.THREAD ? spots.size() : spots.size() + " mm")
                .put("mask", spots.mask(shop).map(Mask::says).orElse(NOT_HELD))
                .put("masks", spots.count());
    }
}
