package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the workshop asks of every family, whatever the family's own files ask.
 *
 * @param kinds what parts of a kind bring with them, by name
 * @param bounds what no limit of a test may go beyond, by name
 */
public record HouseRules(Map<String, PartKind> kinds, Map<String, Bound> bounds) {

    /** Of a workshop that asks nothing. */
    public static final HouseRules NONE = new HouseRules(Map.of(), Map.of());

    /**
     * What a limit of a test may not go beyond. A test that has such a bound has a limit on every side on which the bound has one.
     *
     * @param unit of both figures
     * @param atLeast the least that may pass, or null
     * @param atMost the most that may pass, or null
     * @param source where it is published, or that it is the workshop's own
     */
    public record Bound(
            String name,
            String says,
            String unit,
            @Nullable BigDecimal atLeast,
            @Nullable BigDecimal atMost,
            String source) {}
}
