package boltlore.trades.weighing;

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
}
