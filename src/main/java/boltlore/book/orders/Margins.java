package boltlore.book.orders;

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
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What orders that were confirmed since a day leave above their full cost, by kit: net prices as they were quoted, without
 * tax, against the full cost that was kept with each quotation. Change orders that came later are not among them.
 */
public final class Margins {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private Margins() {}

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
    public static List<Margin> since(Reading reading, Instant from) {
        SortedMap<String, Margin> byFamily = new TreeMap<>();
        reading.orders().confirmedSince(from).stream()
                .map(Margins::margin)
                .forEach(one -> byFamily.merge(one.family() + " " + one.currency(), one, Margin::and));
        return new ArrayList<>(byFamily.values());
    }

    private static Margin margin(Orders.Confirmed order) {
        Faults faults = new Faults();
        ObjectReader cost = reader(order.order(), order.cost(), faults);
        ObjectReader figures = reader(order.order(), order.figures(), faults);
        BigDecimal net = order.net();
        BigDecimal home = figures.has("rate")
                ? net.divide(figures.decimal("rate", Range.POSITIVE), 2, RoundingMode.HALF_UP)
                : net;
        Margin margin =
                new Margin(order.family(), cost.text("currency"), 1, home, cost.decimal("full", Range.NOT_NEGATIVE));
        if (faults.orElse(margin) instanceof Outcome.Sound<Margin> sound) {
            return sound.value();
        }
        throw new IllegalStateException("No figures of " + order.order());
    }

    private static ObjectReader reader(String order, String content, Faults faults) {
        if (JsonFile.parse(order, content.getBytes(StandardCharsets.UTF_8)) instanceof Outcome.Sound<Json> sound) {
            return ObjectReader.of(sound.value(), faults);
        }
        throw new IllegalStateException("No object of " + order);
    }
}
