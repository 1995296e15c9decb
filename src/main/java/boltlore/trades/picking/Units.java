package boltlore.trades.picking;

import java.util.Set;

/** Units of what is drawn from a drum, a can or a scale. */
public final class Units {

    private static final Set<String> MEASURED = Set.of("m", "l", "kg");

    private Units() {}

    /** Whether so much of it is measured out rather than counted. */
    public static boolean measured(String unit) {
        return MEASURED.contains(unit);
    }
}
