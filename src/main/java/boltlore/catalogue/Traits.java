package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a part is, for what the house knows of its kind.
 *
 * @param kinds of house.json that it is of, beside those that its customs code or its ports show
 * @param ratedAmps of a fuse or breaker, by its maker
 * @param ratedWatts that a device draws or gives at most, by its maker
 * @param stud thread of the stud or bolt that its holes are for, as M8
 */
public record Traits(
        List<String> kinds,
        @Nullable BigDecimal ratedAmps,
        @Nullable BigDecimal ratedWatts,
        @Nullable ThreadName stud) {

    /** Of a part of which nothing is said. */
    public static final Traits NONE = new Traits(List.of(), null, null, null);
}
