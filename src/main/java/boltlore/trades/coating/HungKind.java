package boltlore.trades.coating;

import java.math.BigDecimal;

/**
 * Pieces of one row, which take up the same each.
 *
 * @param size of one with all that it takes up
 * @param slowestMm thickest section, which reaches metal temperature last
 */
record HungKind(BatchRow row, LoadUnits size, BigDecimal slowestMm) {

    static HungKind of(BatchRow row) {
        return new HungKind(row, LoadUnits.up(LoadSize.of(row)), row.coat().thickestMm());
    }

    int pieces() {
        return row.pieces();
    }
}
