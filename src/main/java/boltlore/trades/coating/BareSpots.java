package boltlore.trades.coating;

import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Feature;
import boltlore.catalogue.Mask;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Threads, faces or earth points of one kind and size that must end up bare.
 *
 * @param size as the part master writes it: the thread, or a diameter in mm
 * @param masked whether they are masked before coating; else they are chased after it
 */
public record BareSpots(Feature.Kind kind, String size, boolean masked, int count) {

    private record Sort(Feature.Kind kind, String size, boolean masked) {}

    private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?");

    private static final Comparator<Sort> ORDER = Comparator.comparing(Sort::kind)
            .thenComparing(sort -> diameter(sort.size()))
            .thenComparing(Sort::size)
            .thenComparing(Sort::masked, Comparator.reverseOrder());

    /** Of all pieces of the rows, summed by kind and size. */
    public static List<BareSpots> of(List<BatchRow> rows) {
        Map<Sort, Integer> counts = new TreeMap<>(ORDER);
        for (BatchRow row : rows) {
            row.coat()
                    .features()
                    .forEach(feature -> counts.merge(sort(feature), feature.count() * row.pieces(), Integer::sum));
        }
        return counts.entrySet().stream()
                .map(entry -> spots(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static Sort sort(Feature feature) {
        return new Sort(feature.kind(), feature.size(), feature.treat() == Feature.Treat.MASKED);
    }

    private static BareSpots spots(Sort sort, int count) {
        return new BareSpots(sort.kind(), sort.size(), sort.masked(), count);
    }

    /** Whether pieces of the row have any of them. */
    boolean areOn(BatchRow row) {
        Sort wanted = new Sort(kind, size, masked);
        return row.coat().features().stream().map(BareSpots::sort).anyMatch(wanted::equals);
    }

    /** The shop's mask for them, or empty where it holds none of that kind and size. */
    public Optional<Mask> mask(CoatingShop shop) {
        return shop.maskFor(new Feature(kind, size, count, Feature.Treat.MASKED));
    }

    /** 'thread M8', 'earth point 20 mm'. */
    String says() {
        return says(kind, size);
    }

    static String says(Feature.Kind kind, String size) {
        return switch (kind) {
            case THREAD -> "thread " + size;
            case EARTH -> "earth point " + size + " mm";
            case FACE -> "face " + size + " mm";
        };
    }

    /** M10 comes after M8 although '1' comes before '8'. */
    private static BigDecimal diameter(String size) {
        Matcher number = NUMBER.matcher(size);
        return number.find() ? new BigDecimal(number.group()) : BigDecimal.ZERO;
    }
}
