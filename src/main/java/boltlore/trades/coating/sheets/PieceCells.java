package boltlore.trades.coating.sheets;

import boltlore.report.RowBuilder;
import boltlore.trades.coating.BatchRow;

/** The cells by which several tables name the pieces of a row. */
final class PieceCells {

    private PieceCells() {}

    /** Part and name. */
    static RowBuilder named(RowBuilder cells, BatchRow row) {
        return cells.put("part", row.part().number().text())
                .put("name", row.part().name().english());
    }

    /** Part and name, how many pieces, and whose. */
    static RowBuilder counted(RowBuilder cells, BatchRow row) {
        return named(cells, row).put("pieces", row.pieces()).put("marks", CoatWords.marks(row));
    }
}
