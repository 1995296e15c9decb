package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What an assembly is made of.
 *
 * @param stocked picked at this level
 * @param weighedKg mass read on a scale, for checking only
 */
public record Structure(
        List<Contained> contains,
        @Nullable Joined joined,
        boolean stocked,
        @Nullable BigDecimal weighedKg) {

    public static final Structure LEAF = new Structure(List.of(), null, false, null);
}
