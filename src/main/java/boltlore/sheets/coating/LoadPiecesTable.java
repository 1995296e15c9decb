package boltlore.sheets.coating;

import boltlore.coating.BatchRow;
import boltlore.coating.OvenBatch;
import boltlore.coating.OvenLoad;
import boltlore.sheets.Column;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;
import java.util.List;

/** Which piece hangs in which load, for a batch of more than one. */
final class LoadPiecesTable {

    private static final Column[] COLUMNS = {
        Column.text("load", "Load"),
        Column.text("part", "Part"),
        Column.text("name", "Name").atMost(36),
        Column.text("marks", "Order and piece marks").atMost(30),
        Column.text("section", "Section thin–thick").in("mm").atMost(10),
        Column.whole("pieces", "Pieces"),
        Column.tick("hung", "Hung")
    };

    private LoadPiecesTable() {}

    static TableBuilder of(OvenBatch batch) {
        TableBuilder table = Table.named("load-pieces").columns(COLUMNS);
        List<OvenLoad> loads = batch.loads();
        for (int i = 0; i < loads.size(); i++) {
            rows(table, loads.get(i), i + 1);
        }
        return table;
    }

    private static void rows(TableBuilder table, OvenLoad load, int number) {
        String pieces = CoatWords.count(load.pieces(), "piece", "pieces");
        table.group("load-" + number, "Load " + number + ", " + pieces);
        for (BatchRow row : load.rows()) {
            PieceCells.counted(table.row(), row)
                    .put("load", String.valueOf(number))
                    .put("section", CoatWords.section(row));
        }
    }
}
