package boltlore.testing;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/**
 * A limit or target as a number.
 *
 * @param value null where it cannot be worked out
 * @param itselfFails whether a reading that is just the limit fails
 * @param basis how it comes about in figures, or what is missing
 */
record Figure(
        @Nullable BigDecimal value, boolean itselfFails, String unit, String basis) {

    /** Limits are shown and kept to so many digits: no instrument of a workshop shows more. */
    private static final MathContext SHOWN = new MathContext(4);

    static Figure of(BigDecimal value, String unit, String basis) {
        return new Figure(value.round(SHOWN), false, unit, basis);
    }

    static Figure missing(String what) {
        return new Figure(null, false, "", what);
    }

    static String plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.setScale(Math.max(0, stripped.scale())).toPlainString();
    }
}
