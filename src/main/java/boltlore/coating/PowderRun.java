package boltlore.coating;

import java.util.List;

/**
 * Passes through the booth one after the other with the same powder.
 *
 * @param changeOver whether the booth must be cleaned down to this powder first
 */
public record PowderRun(String powder, String booth, boolean changeOver, List<Pass> passes) {

    /** One coat of one batch; coat counts from 1 at the metal. */
    public record Pass(int batch, int coat, int coats) {}
}
