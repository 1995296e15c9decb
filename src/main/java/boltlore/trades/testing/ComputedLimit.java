package boltlore.trades.testing;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A limit with how it comes about.
 *
 * @param basis in figures: '500 ohm/V × 396 V'; empty where it stands in the catalogue
 * @param unit of limit and result, empty with a state
 * @param suitedOhm what the known resistor of an isolation test should about be; null with other tests
 * @param packVolts what the pack shows between empty and full, where the result follows from it; null with other tests
 */
record ComputedLimit(
        Limit limit, String basis, String unit, @Nullable BigDecimal suitedOhm, Limit.@Nullable Between packVolts) {

    ComputedLimit(Limit limit, String basis, String unit) {
        this(limit, basis, unit, null, null);
    }
}
