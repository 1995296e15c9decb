package boltlore.trades.coating;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * When film readings on one piece are good: their mean reaches the least film, none lies below 80 % of it. From memory:
 * specification for a quality label for coatings on aluminium, used here as house rule for steel as well.
 *
 * @param leastUm least film of all coats together in µm
 */
public record FilmAcceptance(int leastUm) {

    /** Places on a piece at which the film is read. */
    public static final int READINGS = 5;

    private static final BigDecimal FLOOR = new BigDecimal("0.8");

    /** No single reading may lie below this, in µm. */
    public BigDecimal floorUm() {
        return FLOOR.multiply(BigDecimal.valueOf(leastUm)).stripTrailingZeros();
    }

    /** Readings in µm, at least one. */
    public boolean accepts(List<BigDecimal> readingsUm) {
        return mean(readingsUm).compareTo(BigDecimal.valueOf(leastUm)) >= 0
                && readingsUm.stream().allMatch(reading -> reading.compareTo(floorUm()) >= 0);
    }

    public static BigDecimal mean(List<BigDecimal> readingsUm) {
        return readingsUm.stream()
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(BigDecimal.valueOf(readingsUm.size()), MathContext.DECIMAL128);
    }
}
