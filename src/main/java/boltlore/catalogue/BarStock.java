package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;

/**
 * The bars in which a material is bought, and how they are sawn.
 *
 * @param acrossMm size of the section in the plane of slanted cuts
 * @param turns whether pieces may be turned over and end for end, so that slanted ends lie against each other
 * @param keepFromMm shortest rest of a bar that is kept
 * @param lengths at least one, each once
 */
public record BarStock(Saw saw, BigDecimal acrossMm, boolean turns, BigDecimal keepFromMm, List<BarLength> lengths) {

    public BarLength longest() {
        return lengths.stream()
                .max(Comparator.comparingInt(BarLength::lengthMm))
                .orElseThrow();
    }

    /** Length of the longest piece that can be cut. */
    public BigDecimal longestPieceMm() {
        return BigDecimal.valueOf(longest().lengthMm())
                .subtract(saw.headTrimMm())
                .subtract(saw.heldTailMm());
    }
}
