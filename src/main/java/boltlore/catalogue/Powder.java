package boltlore.catalogue;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A powder with its price.
 *
 * @param lightness L* of the cured film (CIE 1976), 0 black to 100 white, or null where nobody has measured it
 * @param neverReclaimed why its overspray is never sprayed again, such as metal flakes that part from the base, or empty
 */
public record Powder(
        String code,
        String says,
        BigDecimal pricePerKg,
        @Nullable BigDecimal lightness,
        String neverReclaimed) {

    public Powder(String code, String says, BigDecimal pricePerKg) {
        this(code, says, pricePerKg, null, "");
    }
}
