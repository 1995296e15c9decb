package boltlore.trades.testing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/**
 * A limit or target as a number, or what is missing to work it out.
 *
 * @param itselfFails whether a reading that is just the limit fails
 * @param basis how it comes about in figures; empty where it stands in a standard or in the catalogue
 */
record Figure(
        @Nullable BigDecimal value,
        boolean itselfFails,
        String unit,
        String basis,
        @Nullable NotKnown missing) {

    /** Limits are shown and kept to so many digits, as no instrument of a workshop shows more. */
    private static final int DIGITS = 4;

    static Figure of(BigDecimal value, String unit, String basis) {
        return rounded(value, RoundingMode.HALF_UP, unit, basis);
    }

    /** Rounded up, so that nothing passes that would not. */
    static Figure least(BigDecimal value, String unit, String basis) {
        return rounded(value, RoundingMode.CEILING, unit, basis);
    }

    /** Rounded down, so that nothing passes that would not. */
    static Figure most(BigDecimal value, String unit, String basis) {
        return rounded(value, RoundingMode.FLOOR, unit, basis);
    }

    private static Figure rounded(BigDecimal value, RoundingMode how, String unit, String basis) {
        return new Figure(value.round(new MathContext(DIGITS, how)), false, unit, basis, null);
    }

    static BigDecimal up(BigDecimal number) {
        return number.round(new MathContext(DIGITS, RoundingMode.CEILING));
    }

    static BigDecimal down(BigDecimal number) {
        return number.round(new MathContext(DIGITS, RoundingMode.FLOOR));
    }

    static Figure missing(NotKnown what) {
        return new Figure(null, false, "", "", what);
    }
}
