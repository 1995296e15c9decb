package boltlore.trades.coating;

import boltlore.catalogue.Drawing;
import boltlore.catalogue.Feature;
import boltlore.report.Column;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The earth points of a batch, to be found bare and measured before anything leaves the shop. */
final class EarthTable {

    private static final TableSpec<BatchRow> POINTS = points();

    static final String BARE =
            "A coated earth point can leave metal live in a fault. Each is bare and clean; measure from it to a second bare"
                    + " place of the same piece, against the limit on the drawing; write the highest.";

    private EarthTable() {}

    private static TableSpec<BatchRow> points() {
        TableSpec<BatchRow> table = CoatWords.named(TableSpec.<BatchRow>named("earth"), 20, row -> row)
                .text("size", "Earth points on each piece", 20, row -> CoatWords.spots(row, EarthTable::earth));
        return CoatWords.marked(table, 18, row -> row)
                .text("drawing", "Drawing with the limit", 11, EarthTable::drawing)
                .whole("points", "Earth points", "", row -> points(row) * (long) row.pieces())
                .box(Column.blank("bare", "Found bare"))
                .box(Column.blank("continuity", "Resistance").in("Ω"))
                .box(Column.signature("by", "Measured by"));
    }

    /** Whether a piece of the rows has an earth point. */
    static boolean speaksOf(List<BatchRow> rows) {
        return rows.stream().anyMatch(row -> points(row) > 0);
    }

    /**
     * Nothing where no piece has an earth point.
     *
     * @param of what is measured, 'batch' or 'send-out', by its number
     */
    static void on(PageBuilder page, List<BatchRow> rows, String of, int number) {
        if (speaksOf(rows)) {
            List<BatchRow> earthed =
                    rows.stream().filter(row -> points(row) > 0).toList();
            page.add(POINTS.of(earthed).about(of, number));
        }
    }

    private static @Nullable String drawing(BatchRow row) {
        Drawing drawing = row.part().making().drawing();
        return drawing == null ? null : drawing.shown();
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
