package boltlore.coating;

import boltlore.catalogue.Coats;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Oven;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Pieces of one finish, and so of one powder and cure window for each coat, for one own oven.
 *
 * @param number by which sheets speak of it, from 1
 * @param needBy day on which the first of the pieces must be in store, or null where no order has a date
 * @param rows that fit into the oven, earliest need first
 * @param tooBig rows that do not
 * @param leastLoads fewer loads than this cannot do
 */
public record OvenBatch(
        int number,
        Finish finish,
        Oven oven,
        @Nullable LocalDate needBy,
        List<BatchRow> rows,
        List<TooBig> tooBig,
        List<OvenLoad> loads,
        int leastLoads) {

    /** Rows of one finish, at least one, sorted into what fits the oven and what does not. */
    static OvenBatch of(int number, Oven oven, List<BatchRow> group) {
        List<TooBig> tooBig = group.stream()
                .map(row -> TooBig.of(row, oven))
                .flatMap(Optional::stream)
                .toList();
        List<BatchRow> rows =
                group.stream().filter(row -> TooBig.of(row, oven).isEmpty()).toList();
        LoadSize limits = LoadSize.limits(oven);
        List<OvenLoad> loads = OvenLoads.of(rows, limits);
        int least = OvenLoads.atLeast(rows, limits);
        Finish finish = group.get(0).finish();
        return new OvenBatch(number, finish, oven, BatchRow.earliestNeed(group), rows, tooBig, loads, least);
    }

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

    /** Powder to issue for one coat in kg. */
    public BigDecimal issueKg(Coats coat) {
        return FilmMass.issue(areaM2(), coat);
    }

    /** Film of one coat at its target in kg. */
    public BigDecimal filmKg(Coats coat) {
        return FilmMass.film(areaM2(), coat);
    }
}
