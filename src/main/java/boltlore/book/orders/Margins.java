package boltlore.book.orders;

import boltlore.book.db.Contents;
import boltlore.book.db.Orders;
import boltlore.book.db.Reading;
import boltlore.faults.Outcome;
import boltlore.json.Faults;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What orders that were confirmed since a day leave above their full cost, by kit: net prices as they were quoted, without
 * tax, against the full cost that was kept with each quotation. Change orders that came later are not among them.
 */
public final class Margins {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private static final int MOST_KEPT = 10_000;

    private final Map<Kept, Quoted> quoted = new LinkedHashMap<>(MOST_KEPT, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Kept, Quoted> eldest) {
            return size() > MOST_KEPT;
        }
    };

    /** Hashes of what was kept with a quotation. */
    private record Kept(String cost, String figures) {}

    /**
     * What of that says the margin; it never changes, so that it is read once.
     *
     * @param rate of the quotation's currency; null where it is the workshop's
     */
    private record Quoted(
            String currency, BigDecimal full, @Nullable BigDecimal rate) {}

    /**
     * Of one family, in one currency: that of the workshop.
     *
     * @param net sum of the prices before tax; those in another currency turned back by the rate of their quotation
     * @param full sum of the full costs
     */
    public record Margin(String family, String currency, int orders, BigDecimal net, BigDecimal full) {

        public BigDecimal margin() {
            return net.subtract(full);
        }

        /** Of the net price, to a tenth; 0 where there is no price. */
        public BigDecimal percent() {
            return net.signum() == 0
                    ? BigDecimal.ZERO
                    : margin().multiply(HUNDRED).divide(net, 1, RoundingMode.HALF_UP);
        }

        Margin and(Margin other) {
            return new Margin(family, currency, orders + other.orders, net.add(other.net), full.add(other.full));
        }
    }

    /** By family, then by currency; of a kit that was given up since too, for it was ordered. */
    public List<Margin> since(Reading reading, Instant from) {
        SortedMap<String, Margin> byFamily = new TreeMap<>();
        reading.orders().confirmedSince(from).stream()
                .map(order -> margin(reading, order))
                .forEach(one -> byFamily.merge(one.family() + " " + one.currency(), one, Margin::and));
        return new ArrayList<>(byFamily.values());
    }

    private Margin margin(Reading reading, Orders.Confirmed order) {
        Quoted known = quoted(reading, order);
        BigDecimal home =
                known.rate() == null ? order.net() : order.net().divide(known.rate(), 2, RoundingMode.HALF_UP);
        return new Margin(order.family(), known.currency(), 1, home, known.full());
    }

    private synchronized Quoted quoted(Reading reading, Orders.Confirmed order) {
        return quoted.computeIfAbsent(
                new Kept(order.cost(), order.figures()), kept -> read(reading.contents(), order.order(), kept));
    }

    private static Quoted read(Contents contents, String order, Kept kept) {
        Faults faults = new Faults();
        ObjectReader cost = reader(order, contents.of(kept.cost()), faults);
        ObjectReader figures = reader(order, contents.of(kept.figures()), faults);
        Quoted read = new Quoted(
                cost.text("currency"),
                cost.decimal("full", Range.NOT_NEGATIVE),
                figures.has("rate") ? figures.decimal("rate", Range.POSITIVE) : null);
        if (faults.orElse(read) instanceof Outcome.Sound<Quoted> sound) {
            return sound.value();
        }
        throw new IllegalStateException("No figures of " + order);
    }

    private static ObjectReader reader(String order, byte[] content, Faults faults) {
        if (JsonFile.parse(order, content) instanceof Outcome.Sound<Json> sound) {
            return ObjectReader.of(sound.value(), faults);
        }
        throw new IllegalStateException("No object of " + order);
    }
}
