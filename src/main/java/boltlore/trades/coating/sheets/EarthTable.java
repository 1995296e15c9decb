package boltlore.trades.coating.sheets;

import boltlore.catalogue.Feature;
import boltlore.report.Column;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.BatchRow;
import java.util.List;

/** The earth points of a batch, to be found bare and measured before anything leaves the shop. */
final class EarthTable {

    private static final Column[] COLUMNS = {
        Column.text("part", "Part"),
        Column.text("name", "Name").atMost(24),
        Column.text("size", "Earth points on each piece").atMost(28),
        Column.text("marks", "Order and piece marks").atMost(30),
        Column.whole("points", "Earth points"),
        Column.blank("bare", "Found bare"),
        Column.blank("continuity", "Resistance").in("Ω"),
        Column.signature("by", "Measured by")
    };

    private static final String BARE =
            "A coated earth point can leave metal live in a fault. Each is bare and clean; measure from it to a second bare"
                    + " place of the same piece, against the limit on the drawing; write the highest.";

    private EarthTable() {}

    /** Whether a piece of the rows has an earth point. */
    static boolean speaksOf(List<BatchRow> rows) {
        return rows.stream().anyMatch(EarthTable::speaksOf);
    }

    static boolean speaksOf(BatchRow row) {
        return points(row) > 0;
    }

    /** Nothing where no piece has an earth point. */
    static void on(PageBuilder page, List<BatchRow> rows) {
        List<BatchRow> earthed = rows.stream().filter(EarthTable::speaksOf).toList();
        if (earthed.isEmpty()) {
            return;
        }
        page.heading("Earth points").note(BARE).add(table(earthed));
    }

    private static TableBuilder table(List<BatchRow> earthed) {
        TableBuilder table = Table.named("earth").columns(COLUMNS);
        earthed.forEach(row -> PieceCells.named(table.row(), row)
                .put("size", CoatWords.spots(row, EarthTable::earth))
                .put("points", points(row) * (long) row.pieces())
                .put("marks", CoatWords.marks(row)));
        return table;
    }

    private static boolean earth(Feature feature) {
        return feature.kind() == Feature.Kind.EARTH;
    }

    private static int points(BatchRow row) {
        return row.coat().features().stream()
                .filter(EarthTable::earth)
                .mapToInt(Feature::count)
                .sum();
    }
}
