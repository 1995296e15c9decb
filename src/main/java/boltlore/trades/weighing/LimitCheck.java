package boltlore.trades.weighing;

import boltlore.measure.Percent;
import java.math.BigDecimal;

/** A load beside its limit, both in kg. */
public record LimitCheck(LoadCase loadCase, Limited limited, BigDecimal loadKg, BigDecimal limitKg) {

    /** What may still come; below 0 where the limit is exceeded. */
    public BigDecimal marginKg() {
        return limitKg.subtract(loadKg);
    }

    public boolean exceeded() {
        return marginKg().signum() < 0;
    }

    /** What is said of it: below the limit, what was computed may be wrong by that share of it. */
    Standing standing(BigDecimal tolerancePercent) {
        if (exceeded()) {
            return Standing.ABOVE;
        }
        return marginKg().compareTo(loadKg.multiply(Percent.fraction(tolerancePercent))) < 0
                ? Standing.NOT_DECIDED
                : Standing.WITHIN;
    }

    /** How a mass stands to its limit, in the words of every page, the worst last. */
    enum Standing {
        WITHIN("within"),
        NOT_DECIDED("not decided: weigh the vehicle"),
        ABOVE("above");

        private final String says;

        Standing(String says) {
            this.says = says;
        }

        String says() {
            return says;
        }
    }
}
