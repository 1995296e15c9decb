package boltlore.catalogue;

import boltlore.measure.PartNumber;
import org.jspecify.annotations.Nullable;

/**
 * Size and hand of a part as it is built in; null where nothing is said.
 *
 * @param size over all, without any packing
 * @param inner clear space inside a box, lid on
 * @param mirrorOf the part that this one is the mirror image of
 */
public record Geometry(
        @Nullable EnvelopeMm size,
        @Nullable EnvelopeMm inner,
        @Nullable PartNumber mirrorOf) {

    public static final Geometry NONE = new Geometry(null, null, null);
}
