package boltlore.trades.coating.sheets;

import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.BatchRow;
import java.math.BigDecimal;
import java.util.List;

/** Brackets that carry nothing in their kit while nobody has decided what becomes of them. */
final class HeldBackTable {

    private static final Column[] COLUMNS = {
        Column.text("part", "Part"),
        Column.text("revision", "Rev"),
        Column.text("name", "Name").atMost(30),
        Column.text("finish", "Finish").atMost(30),
        Column.text("marks", "Order and piece marks").atMost(30),
        Column.whole("pieces", "Pieces"),
        new Column("decision", "Left out or kept", Kind.blank().oneOf("Left out", "Kept")),
        Column.signature("by", "Decided by")
    };

    private HeldBackTable() {}

    static TableBuilder of(List<BatchRow> heldBack) {
        TableBuilder table = Table.named("held-back").columns(COLUMNS);
        heldBack.forEach(row -> PieceCells.counted(table.row(), row)
                .put("revision", row.part().revision())
                .put("finish", row.finish().says().english()));
        int pieces = heldBack.stream().mapToInt(BatchRow::pieces).sum();
        table.total("total", "Held back").sum("pieces", BigDecimal.valueOf(pieces));
        return table;
    }
}
