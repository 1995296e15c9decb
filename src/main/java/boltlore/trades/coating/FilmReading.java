package boltlore.trades.coating;

import java.math.BigDecimal;
import java.util.List;

/**
 * Film read on one piece after its last coat.
 *
 * @param part number of the part
 * @param piece its mark, such as 'BL-1001 3', or empty where nobody wrote it down
 * @param um one reading a place, in µm
 */
public record FilmReading(int batch, String part, String piece, List<BigDecimal> um) {

    public BigDecimal lowest() {
        return um.stream().reduce(BigDecimal::min).orElseThrow();
    }
}
