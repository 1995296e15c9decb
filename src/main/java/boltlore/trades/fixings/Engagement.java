package boltlore.trades.fixings;

import boltlore.catalogue.JointFacts.Into;
import java.math.BigDecimal;

/** Least length of thread in a tapped hole as a multiple of its diameter; common practice, no source. */
public final class Engagement {

    private Engagement() {}

    /** The lower end of what is usual: 1 in steel, 1.25 in cast iron, 1.5 in aluminium; a nut brings its own. */
    public static BigDecimal least(Into into) {
        return switch (into) {
            case NUT, STEEL -> BigDecimal.ONE;
            case CAST_IRON -> new BigDecimal("1.25");
            case ALUMINIUM -> new BigDecimal("1.5");
        };
    }
}
