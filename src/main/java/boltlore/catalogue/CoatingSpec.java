package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a part is coated: a finish role that the order decides, or a fixed finish.
 *
 * @param role finish role, or null where the finish is fixed
 * @param finish fixed finish, or null where a role decides
 * @param areaM2 coated area of one part
 * @param thinnestMm thinnest section
 * @param thickestMm thickest section
 */
public record CoatingSpec(
        @Nullable String role,
        @Nullable String finish,
        BigDecimal areaM2,
        BigDecimal thinnestMm,
        BigDecimal thickestMm,
        List<Feature> features,
        int hangPoints,
        @Nullable EnvelopeMm envelope) {}
