package boltlore.trades.coating;

import java.math.BigDecimal;

/**
 * What a film of powder does to sizes. Geometry of the 60° thread: measured square to its flanks, which stand at 30° to the
 * axis' normal, a film moves each flank so far that the pitch diameter changes by film / sin 30° on each side, four times the
 * film in all (textbook geometry, from memory). A hole loses the film on each side.
 */
public final class FilmGrowth {

    private static final BigDecimal UM_PER_MM = BigDecimal.valueOf(1000);
    private static final BigDecimal ON_A_THREAD = BigDecimal.valueOf(4);
    private static final BigDecimal IN_A_HOLE = BigDecimal.valueOf(2);

    private FilmGrowth() {}

    /** By how much in mm the pitch diameter of a thread is off its size under a film in µm. */
    public static BigDecimal threadMm(int filmUm) {
        return ON_A_THREAD.multiply(BigDecimal.valueOf(filmUm)).divide(UM_PER_MM);
    }

    /** The film in µm that uses up an allowance in mm on a thread's pitch diameter. */
    public static BigDecimal filmForAllowanceUm(BigDecimal allowanceMm) {
        return allowanceMm.multiply(UM_PER_MM).divide(ON_A_THREAD);
    }

    /** Diameter in mm that a bare hole of that diameter has under a film in µm. */
    public static BigDecimal holeMm(BigDecimal bareMm, int filmUm) {
        return bareMm.subtract(IN_A_HOLE.multiply(BigDecimal.valueOf(filmUm)).divide(UM_PER_MM));
    }
}
