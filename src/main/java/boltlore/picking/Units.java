package boltlore.picking;

import java.util.Set;

/** Units of what is drawn from a drum, a can or a scale. */
final class Units {

    private static final Set<String> MEASURED = Set.of("m", "l", "kg");

    private Units() {}

    static boolean measured(String unit) {
        return MEASURED.contains(unit);
    }
}
