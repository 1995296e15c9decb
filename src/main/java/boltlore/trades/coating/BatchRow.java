package boltlore.trades.coating;

import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Pieces of one part, from one or several orders, that take one finish.
 *
 * @param coat the part's own
 * @param massKg of one piece, its children included, without film
 * @param marks earliest need first
 */
public record BatchRow(
        Part part, CoatingSpec coat, Finish finish, BigDecimal massKg, CoatingStatus status, List<PieceMarks> marks) {

    /** Days in their order, with those that nobody has set at the end. */
    static final Comparator<@Nullable LocalDate> EARLIEST = Comparator.nullsLast(Comparator.naturalOrder());

    static final Comparator<BatchRow> EARLIEST_NEED = Comparator.comparing(BatchRow::needBy, EARLIEST)
            .thenComparing(row -> row.part().number())
            .thenComparing(BatchRow::status);

    public int pieces() {
        return marks.stream().mapToInt(PieceMarks::pieces).sum();
    }

    /** Coated area of one piece in m². */
    public BigDecimal areaEachM2() {
        return coat.areaM2();
    }

    public BigDecimal areaM2() {
        return times(coat.areaM2());
    }

    /** Bare mass of all pieces in kg. */
    public BigDecimal totalKg() {
        return times(massKg);
    }

    /** The earliest day on which one of the pieces must be in store, or null where no order has a date. */
    public @Nullable LocalDate needBy() {
        return marks.stream()
                .map(PieceMarks::needBy)
                .filter(Objects::nonNull)
                .min(Comparator.naturalOrder())
                .orElse(null);
    }

    /** The earliest day of all the rows, or null where no order has a date. */
    static @Nullable LocalDate earliestNeed(List<BatchRow> rows) {
        return rows.stream()
                .map(BatchRow::needBy)
                .filter(Objects::nonNull)
                .min(Comparator.naturalOrder())
                .orElse(null);
    }

    /** The same part with other pieces. */
    BatchRow of(List<PieceMarks> others) {
        return new BatchRow(part, coat, finish, massKg, status, PieceMarks.joined(others));
    }

    private record Same(String part, String finish, CoatingStatus status) {}

    private Same same() {
        return new Same(part.number().text(), finish.name(), status);
    }

    /** Pieces of one part, finish and status in one row each, in the order of their first. */
    static List<BatchRow> merged(List<BatchRow> rows) {
        Map<Same, BatchRow> merged = new LinkedHashMap<>();
        rows.forEach(row -> merged.merge(row.same(), row, BatchRow::with));
        return List.copyOf(merged.values());
    }

    private BatchRow with(BatchRow other) {
        return of(Stream.concat(marks.stream(), other.marks.stream())
                .sorted(Comparator.comparing(PieceMarks::needBy, EARLIEST)
                        .thenComparing(PieceMarks::order)
                        .thenComparing(PieceMarks::from))
                .toList());
    }

    private BigDecimal times(BigDecimal each) {
        return each.multiply(BigDecimal.valueOf(pieces()));
    }
}
