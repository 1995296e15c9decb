package boltlore.trades.coating;

import boltlore.catalogue.Oven;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What an oven takes.
 *
 * @param sectionRatio times that the slowest section of a piece may be as thick as another's, or null
 */
record LoadLimits(LoadUnits most, @Nullable BigDecimal sectionRatio) {

    static LoadLimits of(Oven oven) {
        return new LoadLimits(LoadUnits.down(LoadSize.limits(oven)), oven.sectionRatio());
    }

    /** Whether pieces with these slowest sections in mm may share a load. */
    boolean together(BigDecimal thinnestMm, BigDecimal thickestMm) {
        return sectionRatio == null || thickestMm.compareTo(thinnestMm.multiply(sectionRatio)) <= 0;
    }

    /** Largest share of one of the limits, near enough to tell which load is fuller. */
    double fullness(LoadUnits used) {
        double fullest = 0;
        for (int kind = 0; kind < LoadUnits.KINDS; kind++) {
            fullest = Math.max(fullest, share(used, kind));
        }
        return fullest;
    }

    double share(LoadUnits used, int kind) {
        return most.at(kind) == 0 ? 0 : (double) used.at(kind) / most.at(kind);
    }
}
