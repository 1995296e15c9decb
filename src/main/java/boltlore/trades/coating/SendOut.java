package boltlore.trades.coating;

import boltlore.catalogue.Coater;
import boltlore.catalogue.Finish;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Pieces of one finish for an outside coater.
 *
 * @param number by which sheets speak of it, going on from the own batches
 * @param tooBig why pieces of a finish of our own go out all the same, a row each; empty for an outside finish
 * @param price of all pieces, unrounded, in the workshop's currency
 */
public record SendOut(
        int number, Finish finish, Coater coater, List<BatchRow> rows, List<TooBig> tooBig, BigDecimal price) {

    /** Day on which the first of the pieces must be back in store, or null where no order has a date. */
    public @Nullable LocalDate backBy() {
        return BatchRow.earliestNeed(rows);
    }

    /**
     * The last working day that leaves the coater the turn-round in calendar days before the pieces must be back, or null
     * where no order has a date.
     */
    public @Nullable LocalDate outBy() {
        LocalDate back = backBy();
        return back == null ? null : WorkDays.onOrBefore(back.minusDays(coater.turnRoundDays()));
    }

    public int pieces() {
        return rows.stream().mapToInt(BatchRow::pieces).sum();
    }

    public BigDecimal areaM2() {
        return rows.stream().map(BatchRow::areaM2).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
