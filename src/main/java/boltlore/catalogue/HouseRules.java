package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the workshop asks of every family, whatever the family's own files ask.
 *
 * @param kinds what parts of a kind bring with them, by name
 * @param bounds what no limit of a test may go beyond, by name
 * @param tests that no family may leave out whose kits have a part of some kind
 */
public record HouseRules(Map<String, PartKind> kinds, Map<String, Bound> bounds, List<NeededTest> tests) {

    /** Of a workshop that asks nothing. */
    public static final HouseRules NONE = new HouseRules(Map.of(), Map.of(), List.of());

    /**
     * A test that is made in every kit with a part of some kind.
     *
     * @param with kind of house.json
     * @param there whether it is made where such a part stands, or anywhere in the kit
     * @param asked what it asks of its reading; a figure stands for any figure that keeps the bound
     * @param bound of its limit, or null where it is known by what it asks alone
     * @param source where it is published, or that it is the workshop's own
     */
    public record NeededTest(
            String says,
            String with,
            boolean there,
            @Nullable Demand asked,
            @Nullable String bound,
            String source) {

        /** Whether a test is this one, whatever it is called and wherever it is made. */
        public boolean isBy(KitTest test) {
            return (asked == null || isAlike(asked, test.demand()))
                    && (bound == null || bound.equals(test.bound()))
                    && test.when().equals(Condition.ALWAYS);
        }

        private static boolean isAlike(Demand asked, Demand made) {
            return asked instanceof Demand.Computed rule
                    ? made instanceof Demand.Computed other && other.rule() == rule.rule()
                    : asked.equals(made);
        }
    }

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
