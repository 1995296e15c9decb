package boltlore.trades.picking;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Stores;
import boltlore.walking.Block;
import boltlore.walking.Block.Point;
import boltlore.walking.Route;
import boltlore.walking.RouteRule;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The way through the stores: aisle by aisle, up the bays of one and down those of the next, so that nobody walks an
 * aisle back empty-handed. Whether an aisle is walked up or down depends on its place in the workshop's list alone.
 */
public final class Walk {

    private static final Comparator<Bin> ACROSS_THE_BAY = Comparator.comparing(
                    (Bin bin) -> bin.across().get(0))
            .thenComparing(bin -> bin.across().get(1))
            .thenComparing(bin -> bin.across().get(2));

    private final List<String> aisles;
    private final Stores.@Nullable Layout layout;
    private final Map<String, Optional<Bin>> onTheWay = new ConcurrentHashMap<>();

    public Walk(List<String> aisles) {
        this(aisles, null);
    }

    private Walk(List<String> aisles, Stores.@Nullable Layout layout) {
        this.aisles = aisles;
        this.layout = layout;
    }

    public static Walk of(Catalogue catalogue) {
        return new Walk(catalogue.workshop().aisles(), catalogue.stores().layout());
    }

    /**
     * How far one walks for some bins, from the start and back to it. Lengths in mm.
     *
     * @param asListed from bin to bin in the order of this walk, each time by the nearer end of the aisles
     * @param byRule by each rule
     * @param unmeasured bins that have no measured place, and are in none of the lengths
     */
    public record Lengths(long asListed, Map<RouteRule, Long> byRule, int unmeasured) {

        public long of(RouteRule rule) {
            return byRule.getOrDefault(rule, 0L);
        }
    }

    /** How far one walks for these bins; empty where the aisles are not measured. */
    public Optional<Lengths> lengths(Collection<String> bins) {
        return Optional.ofNullable(layout).map(known -> {
            List<Point> stops = bins.stream()
                    .sorted(order())
                    .flatMap(bin -> place(bin).stream())
                    .distinct()
                    .toList();
            Block block = Block.of(known.aisleLengthMm(), known.startMm(), stops);
            Map<RouteRule, Long> byRule = new EnumMap<>(RouteRule.class);
            for (RouteRule rule : RouteRule.values()) {
                byRule.put(rule, rule.route(block).lengthMm());
            }
            int unmeasured =
                    (int) bins.stream().filter(bin -> place(bin).isEmpty()).count();
            return new Lengths(Route.inOrder(block, stops).lengthMm(), byRule, unmeasured);
        });
    }

    /** Order of these bins as that rule comes by them; the usual order where the aisles are not measured. */
    public Comparator<String> order(RouteRule rule, Collection<String> bins) {
        if (layout == null) {
            return order();
        }
        List<Point> stops = bins.stream().flatMap(bin -> place(bin).stream()).toList();
        List<Point> passed = rule.route(Block.of(layout.aisleLengthMm(), layout.startMm(), stops))
                .stops();
        return Comparator.comparingInt(
                        (String bin) -> place(bin).map(passed::indexOf).orElse(passed.size()))
                .thenComparing(order());
    }

    /** The middle of its bay; empty where that is not measured, or lies beyond the end of the aisle. */
    public Optional<Point> place(String bin) {
        return Optional.ofNullable(layout)
                .flatMap(known -> onTheWay(bin).flatMap(read -> {
                    Stores.Aisle aisle = known.aisles().get(read.aisle());
                    long awayMm = aisle == null ? -1 : aisle.bayAtMm(read.bay());
                    return aisle == null || awayMm < 0 || awayMm > known.aisleLengthMm()
                            ? Optional.empty()
                            : Optional.of(new Point(aisle.atMm(), awayMm));
                }));
    }

    /** Order of bins as they are passed; a bin that is not written as one, or in an aisle not listed, comes last. */
    public Comparator<String> order() {
        return (left, right) -> {
            Optional<Bin> here = onTheWay(left);
            Optional<Bin> there = onTheWay(right);
            if (here.isPresent() && there.isPresent()) {
                return compare(here.get(), there.get());
            }
            return here.isPresent() || there.isPresent()
                    ? Boolean.compare(there.isPresent(), here.isPresent())
                    : strays(left, right);
        };
    }

    /** Whether the bin lies on the way: written as one, in an aisle of the list. */
    public boolean passes(String bin) {
        return onTheWay(bin).isPresent();
    }

    /** Read once, for sorting asks many times. */
    private Optional<Bin> onTheWay(String bin) {
        return onTheWay.computeIfAbsent(bin, text -> Bin.written(text).filter(read -> aisles.contains(read.aisle())));
    }

    private int compare(Bin left, Bin right) {
        int aisle = aisles.indexOf(left.aisle());
        int byAisle = Integer.compare(aisle, aisles.indexOf(right.aisle()));
        if (byAisle != 0) {
            return byAisle;
        }
        int upwards = Integer.compare(left.bay(), right.bay());
        int byBay = aisle % 2 == 0 ? upwards : -upwards;
        return byBay != 0 ? byBay : ACROSS_THE_BAY.compare(left, right);
    }

    /** A part without any bin comes after those whose bin is only odd. */
    private static int strays(String left, String right) {
        int byNone = Boolean.compare(left.isEmpty(), right.isEmpty());
        return byNone != 0 ? byNone : left.compareTo(right);
    }

    /**
     * A place in the stores, written AISLE-BAY-RACK-SHELF-PLACE, for example C-01-02-A-03.
     *
     * @param across rack, shelf and place within the bay, each ready for comparing
     */
    record Bin(String aisle, int bay, List<String> across) {

        private static final Pattern WRITTEN =
                Pattern.compile("([A-Za-z]+)-([0-9]{1,6})-([A-Za-z0-9]+)-([A-Za-z0-9]+)-([A-Za-z0-9]+)");
        private static final Pattern LEADING_ZEROS = Pattern.compile("^0+(?=.)");
        private static final Pattern NUMBER = Pattern.compile("[0-9]+");

        static Optional<Bin> written(String text) {
            Matcher matcher = WRITTEN.matcher(text);
            if (!matcher.matches()) {
                return Optional.empty();
            }
            List<String> across =
                    List.of(comparable(matcher.group(3)), comparable(matcher.group(4)), comparable(matcher.group(5)));
            return Optional.of(new Bin(matcher.group(1), Integer.parseInt(matcher.group(2)), across));
        }

        /** A number gets its count of digits before it, so that 2 comes before 10. */
        private static String comparable(String text) {
            String value = LEADING_ZEROS.matcher(text).replaceFirst("");
            return NUMBER.matcher(value).matches() ? (char) ('0' + value.length()) + value : text;
        }
    }
}
