package boltlore.trades.coating;

import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Finish;
import boltlore.catalogue.PowderCoat;
import boltlore.measure.Digits;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.TableSpec;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** How the coating shop's sheets name pieces, dates and cures. */
final class CoatWords {

    private static final int ORDERS_IN_A_LINE = 2;
    private static final char NO_BREAK = '\u00A0';

    private CoatWords() {}

    /** A table whose rows begin with a part's number and name. */
    static <R> TableSpec<R> named(TableSpec<R> table, int widest, Function<R, BatchRow> row) {
        return table.text(
                        "part", "Part", each -> row.apply(each).part().number().text())
                .said("name", "Name", widest, each -> row.apply(each).part().name());
    }

    static <R> TableSpec<R> marked(TableSpec<R> table, int widest, Function<R, BatchRow> row) {
        return table.text("marks", "Order and piece marks", widest, each -> marks(row.apply(each)));
    }

    static <R> TableSpec<R> counted(TableSpec<R> table, Function<R, BatchRow> row) {
        return table.whole("pieces", "Pieces", "", each -> row.apply(each).pieces());
    }

    /** A text with a unit in its heading. */
    static <R> TableSpec<R> measured(
            TableSpec<R> table, String key, String heading, String unit, int widest, Function<R, String> value) {
        return table.column(Column.text(key, heading).in(unit).atMost(widest), each -> Cell.of(value.apply(each)));
    }

    /** Of one piece: '4 × thread M8, 1 × earth point 20 mm'. */
    static String spots(BatchRow row, Predicate<Feature> which) {
        return row.coat().features().stream()
                .filter(which)
                .map(feature -> feature.count() + " × " + BareSpots.says(feature.kind(), feature.size()))
                .collect(Collectors.joining(", "));
    }

    static boolean masked(Feature feature) {
        return feature.treat() == Feature.Treat.MASKED;
    }

    static boolean chased(Feature feature) {
        return feature.treat() == Feature.Treat.CHASED;
    }

    /** '1020 × 730 × 180', or a request to measure. */
    static String envelope(@Nullable EnvelopeMm size) {
        return size == null ? "measure" : size.length() + " × " + size.width() + " × " + size.height();
    }

    /** 'BL-1001 1–4, BL-1002 1', two orders to a line. */
    static String marks(BatchRow row) {
        StringBuilder marks = new StringBuilder();
        for (int i = 0; i < row.marks().size(); i++) {
            String before = i == 0 ? "" : i % ORDERS_IN_A_LINE == 0 ? ",\n" : ", ";
            marks.append(before).append(row.marks().get(i).written().replace(' ', NO_BREAK));
        }
        return marks.toString();
    }

    static String remark(BatchRow row) {
        String chase = spots(row, CoatWords::chased);
        String status = switch (row.status()) {
            case KEPT -> "kept on purpose";
            case EXTRA -> "extra that the customer asks for";
            case NEEDED, HELD_BACK -> "";
        };
        return List.of(status, chase.isEmpty() ? "" : "chase after coating: " + chase).stream()
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
    }

    /** '180 °C metal, 15 min'. */
    static String cure(PowderCoat coat) {
        return coat.cureMetalC() + " °C metal, " + coat.cureMinutes() + " min";
    }

    /** Of all coats, from the metal outwards. */
    static String cures(Finish finish) {
        return finish.coats().stream().map(CoatWords::cure).distinct().collect(Collectors.joining("; then "));
    }

    static String day(@Nullable LocalDate day) {
        return day == null ? "no date given" : day.toString();
    }

    /** '1 piece', '4 pieces'. */
    static String count(long number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    /** '2–6', or '5' where thinnest and thickest are the same. */
    static String section(BatchRow row) {
        String thin = Digits.plain(row.coat().thinnestMm());
        String thick = Digits.plain(row.coat().thickestMm());
        return thin.equals(thick) ? thin : thin + "–" + thick;
    }
}
