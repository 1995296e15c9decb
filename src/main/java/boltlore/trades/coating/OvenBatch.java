package boltlore.trades.coating;

import boltlore.catalogue.Finish;
import boltlore.catalogue.Oven;
import boltlore.catalogue.PowderCoat;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Pieces of one finish that are pre-treated, coated and read together in one round for one own oven.
 *
 * @param number by which sheets speak of it, from 1
 * @param rows that fit into the oven, earliest need first
 * @param tooBig rows that do not, where no coater is named for them
 */
public record OvenBatch(int number, Finish finish, Oven oven, List<BatchRow> rows, List<TooBig> tooBig) {

    public int pieces() {
        return rows.stream().mapToInt(BatchRow::pieces).sum();
    }

    public BigDecimal areaM2() {
        return rows.stream().map(BatchRow::areaM2).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Bare mass in kg, without film and hanging. */
    public BigDecimal kg() {
        return rows.stream().map(BatchRow::totalKg).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Day on which the first of the pieces must be in store, or null where no order has a date. */
    public @Nullable LocalDate needBy() {
        return BatchRow.earliestNeed(
                rows.isEmpty() ? tooBig.stream().map(TooBig::row).toList() : rows);
    }

    /** Film of one coat at its target in kg. */
    public BigDecimal filmKg(PowderCoat coat) {
        return FilmMass.film(areaM2(), coat);
    }

    OvenBatch with(List<BatchRow> more, List<TooBig> moreTooBig) {
        List<BatchRow> all = Stream.concat(rows.stream(), more.stream()).toList();
        return new OvenBatch(
                number,
                finish,
                oven,
                BatchRow.merged(all),
                Stream.concat(tooBig.stream(), moreTooBig.stream()).toList());
    }
}
