package boltlore.trades.coating.sheets;

import boltlore.catalogue.Coats;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Finish;
import boltlore.measure.Digits;
import boltlore.trades.coating.BatchRow;
import boltlore.trades.coating.Standing;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** How the coating shop says what the plan holds. */
final class CoatWords {

    static final String NO_DATE = "no date given";

    private static final int ORDERS_IN_A_LINE = 2;
    private static final char NO_BREAK = '\u00A0';

    private CoatWords() {}

    /** 'thread M8', 'earth point 20 mm', 'face 30 mm'. */
    static String spot(Feature.Kind kind, String size) {
        return switch (kind) {
            case THREAD -> "thread " + size;
            case EARTH -> "earth point " + size + " mm";
            case FACE -> "face " + size + " mm";
        };
    }

    static String kind(Feature.Kind kind) {
        return switch (kind) {
            case THREAD -> "Thread";
            case EARTH -> "Earth point";
            case FACE -> "Face";
        };
    }

    /** Of one piece: '4 × thread M8, 1 × earth point 20 mm'. */
    static String spots(BatchRow row, Predicate<Feature> which) {
        return row.coat().features().stream()
                .filter(which)
                .map(feature -> feature.count() + " × " + spot(feature.kind(), feature.size()))
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
        String standing = standing(row.standing());
        return List.of(standing, chase.isEmpty() ? "" : "chase after coating: " + chase).stream()
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private static String standing(Standing standing) {
        return switch (standing) {
            case KEPT -> "kept on purpose";
            case EXTRA -> "extra that the customer asks for";
            case NEEDED, HELD_BACK -> "";
        };
    }

    /** '180 °C metal, 15 min'. */
    static String cure(Coats coat) {
        return coat.cureMetalC() + " °C metal, " + coat.cureMinutes() + " min";
    }

    /** Of all coats, from the metal outwards. */
    static String cures(Finish finish) {
        return finish.coats().stream().map(CoatWords::cure).distinct().collect(Collectors.joining("; then "));
    }

    static String powders(Finish finish) {
        return finish.coats().stream().map(Coats::powder).collect(Collectors.joining(", then "));
    }

    static String day(@Nullable LocalDate day) {
        return day == null ? NO_DATE : day.toString();
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
