package boltlore.catalogue;

import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Size and hand of a part as it is built in; null where nothing is said.
 *
 * @param size over all, without any packing
 * @param inner clear space inside a box, lid on
 * @param mirrorOf the part that this one is the mirror image of
 * @param madeFor values of options that the part is shaped for, by the options' names: the body era, the driver's side
 */
public record Geometry(
        @Nullable EnvelopeMm size,
        @Nullable EnvelopeMm inner,
        @Nullable PartNumber mirrorOf,
        SortedMap<OptionName, SortedSet<String>> madeFor) {

    /** Of a part of which nothing is said. */
    public static final Geometry NONE = new Geometry(null, null, null, new TreeMap<>());
}
