package boltlore.trades.coating;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What hangs in the oven together.
 *
 * @param number by which sheets speak of it, through the whole plan from 1
 * @param rows of the batch, each with the marks of those of its pieces that are in this load
 */
public record OvenLoad(int number, List<BatchRow> rows, LoadSize size) {

    /**
     * From this ratio on, thin and thick are told apart: in the same air the time to metal temperature grows about as
     * the thickness does. Common practice, no source.
     */
    private static final BigDecimal THICK_TO_THIN = BigDecimal.valueOf(2);

    private static final Comparator<BatchRow> BY_THINNEST =
            Comparator.comparing(row -> row.coat().thinnestMm());
    private static final Comparator<BatchRow> BY_THICKEST =
            Comparator.comparing(row -> row.coat().thickestMm());

    public int pieces() {
        return rows.stream().mapToInt(BatchRow::pieces).sum();
    }

    public BatchRow thinnest() {
        return rows.stream().min(BY_THINNEST).orElseThrow();
    }

    /** Reaches metal temperature last: the probe belongs on it. */
    public BatchRow thickest() {
        return rows.stream().max(BY_THICKEST).orElseThrow();
    }

    /** Whether thin and thick sections share the load. */
    public boolean mixesSections() {
        BigDecimal thin = thinnest().coat().thinnestMm();
        return thickest().coat().thickestMm().compareTo(thin.multiply(THICK_TO_THIN)) >= 0;
    }

    OvenLoad numbered(int other) {
        return new OvenLoad(other, rows, size);
    }

    @Nullable
    LocalDate needBy() {
        return BatchRow.earliestNeed(rows);
    }
}
