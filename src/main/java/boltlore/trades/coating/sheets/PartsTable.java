package boltlore.trades.coating.sheets;

import boltlore.catalogue.Feature;
import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.BatchRow;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** The pieces of a batch, one row for each part, with boxes for what is counted by hand. */
final class PartsTable {

    private static final List<Column> WHAT = List.of(
            Column.text("part", "Part"),
            Column.text("revision", "Rev"),
            Column.text("name", "Name").atMost(28),
            Column.text("marks", "Order and piece marks").atMost(30));
    private static final Column MASK = Column.text("mask", "Mask on each piece").atMost(24);
    private static final Column REMARK = Column.text("remark", "Remark").atMost(22);
    private static final List<Column> HOW_MANY =
            List.of(Column.text("envelope", "Envelope").in("mm").atMost(18), Column.whole("pieces", "Pieces"));
    private static final Column MASKS = Column.whole("masks", "Masks");
    private static final List<Column> HOW_LARGE = List.of(
            Column.decimal("thin", "Section thin", 1).in("mm"),
            Column.decimal("thick", "Section thick", 1).in("mm"),
            Column.decimal("area-each", "Area each", 3).in("m²"),
            Column.decimal("area", "Area total", 3).in("m²"),
            Column.whole("hang", "Hang points each"));

    private final List<BatchRow> rows;
    private final boolean masked;
    private final boolean remarked;

    private PartsTable(List<BatchRow> rows) {
        this.rows = rows;
        this.masked = masks(rows) > 0;
        this.remarked = rows.stream().anyMatch(row -> !CoatWords.remark(row).isEmpty());
    }

    /**
     * Rows and their totals; no column for masks or remarks where there are none.
     *
     * @param byHand columns at the right end that stay empty for the pen
     */
    static TableBuilder of(List<BatchRow> rows, Column... byHand) {
        PartsTable parts = new PartsTable(rows);
        TableBuilder table = Table.named("pieces").columns(parts.columns(byHand));
        rows.forEach(row -> parts.fill(table.row(), row));
        parts.totals(table.total("total", "Total"));
        return table;
    }

    private Column[] columns(Column... byHand) {
        List<Column> columns = new ArrayList<>(WHAT);
        columns.addAll(masked ? List.of(MASK) : List.of());
        columns.addAll(remarked ? List.of(REMARK) : List.of());
        columns.addAll(HOW_MANY);
        columns.addAll(masked ? List.of(MASKS) : List.of());
        columns.addAll(HOW_LARGE);
        columns.addAll(List.of(byHand));
        return columns.toArray(Column[]::new);
    }

    private void fill(RowBuilder cells, BatchRow row) {
        sizes(PieceCells.counted(cells, row).put("revision", row.part().revision()), row);
        if (remarked) {
            cells.put("remark", CoatWords.remark(row));
        }
        int masks = masks(row);
        if (masks > 0) {
            cells.put("mask", CoatWords.spots(row, CoatWords::masked)).put("masks", masks);
        }
    }

    private static void sizes(RowBuilder cells, BatchRow row) {
        cells.put("thin", row.coat().thinnestMm())
                .put("thick", row.coat().thickestMm())
                .put("area-each", row.areaEachM2())
                .put("area", row.areaM2())
                .put("hang", row.coat().hangPoints())
                .put("envelope", CoatWords.envelope(row.coat().envelope()));
    }

    private void totals(RowBuilder total) {
        int pieces = rows.stream().mapToInt(BatchRow::pieces).sum();
        BigDecimal areaM2 = rows.stream().map(BatchRow::areaM2).reduce(BigDecimal.ZERO, BigDecimal::add);
        total.sum("pieces", BigDecimal.valueOf(pieces)).sum("area", areaM2);
        if (masked) {
            total.sum("masks", BigDecimal.valueOf(masks(rows)));
        }
    }

    static int masks(List<BatchRow> rows) {
        return rows.stream().mapToInt(PartsTable::masks).sum();
    }

    private static int masks(BatchRow row) {
        int onEach = row.coat().features().stream()
                .filter(CoatWords::masked)
                .mapToInt(Feature::count)
                .sum();
        return onEach * row.pieces();
    }
}
