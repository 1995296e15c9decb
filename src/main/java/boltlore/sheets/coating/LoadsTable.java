package boltlore.sheets.coating;

import boltlore.catalogue.Coats;
import boltlore.coating.OvenBatch;
import boltlore.coating.OvenLoad;
import boltlore.sheets.Column;
import boltlore.sheets.RowBuilder;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;
import java.util.List;

/** What hangs in the oven together, with one row to fill in for each coat of each load. */
final class LoadsTable {

    private static final Column[] COLUMNS = {
        Column.text("load", "Load and coat"),
        Column.text("powder", "Powder"),
        Column.text("window", "Cure window").atMost(22),
        Column.whole("pieces", "Pieces"),
        Column.decimal("area", "Area", 3).in("m²"),
        Column.decimal("mass", "Mass with hanging", 1).in("kg"),
        Column.whole("hooks", "Hooks"),
        Column.decimal("volume", "Volume", 0).in("l"),
        Column.decimal("issue", "Powder to issue", 3).in("kg"),
        Column.blank("in", "In at"),
        Column.blank("dwell", "Dwell from"),
        Column.blank("out", "Out at"),
        Column.blank("probe", "Highest metal").in("°C"),
        Column.signature("by", "Cured by")
    };

    private LoadsTable() {}

    static TableBuilder of(OvenBatch batch) {
        TableBuilder table = Table.named("loads").columns(COLUMNS);
        List<OvenLoad> loads = batch.loads();
        for (int i = 0; i < loads.size(); i++) {
            rows(table, batch, loads.get(i), i + 1);
        }
        return table;
    }

    private static void rows(TableBuilder table, OvenBatch batch, OvenLoad load, int number) {
        List<Coats> coats = batch.finish().coats();
        for (int i = 0; i < coats.size(); i++) {
            RowBuilder cells = table.row().put("load", "Load " + number + ", coat " + (i + 1));
            fill(cells, load, coats.get(i));
        }
    }

    private static void fill(RowBuilder cells, OvenLoad load, Coats coat) {
        cells.put("powder", coat.powder())
                .put("pieces", load.pieces())
                .put("area", load.size().areaM2())
                .put("mass", load.size().kg())
                .put("hooks", load.size().hooks())
                .put("volume", load.size().litres())
                .put("issue", load.issueKg(coat))
                .put("window", CoatWords.cure(coat));
    }
}
