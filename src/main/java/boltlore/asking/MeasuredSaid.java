package boltlore.asking;

import boltlore.catalogue.Measure;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.Digits;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dimensions of the vehicle, as they are said in a talk. */
public final class MeasuredSaid {

    private static final Pattern DIMENSION =
            Pattern.compile("\\s*([a-z0-9-]+)\\s*[= ]\\s*([0-9]{1,6}(?:\\.[0-9]{1,3})?)[,;]?");

    private MeasuredSaid() {}

    /** What of the family is measured on each vehicle, and was not yet on this one. */
    public static List<Measure> open(Order order) {
        return order.choices().family().measures().stream()
                .filter(measure -> !order.measuredMm().containsKey(measure.name()))
                .toList();
    }

    /** 'rail-gap: Inside width between the rails? 500 to 520 mm, usually 510'. */
    public static String says(Measure measure) {
        return measure.name() + ": " + measure.asks().english() + " " + Digits.plain(measure.fromMm()) + " to "
                + Digits.plain(measure.toMm()) + " mm, usually " + Digits.plain(measure.usualMm()) + ".";
    }

    /** With what was measured; whether it can be right the order's reader says. */
    public static Outcome<Order> in(Order order, String text) {
        Map<String, BigDecimal> measured = new TreeMap<>(order.measuredMm());
        Matcher said = DIMENSION.matcher(text);
        int end = 0;
        while (said.find() && said.start() == end) {
            measured.put(said.group(1), new BigDecimal(said.group(2)));
            end = said.end();
        }
        return end == 0 || !text.substring(end).isBlank()
                ? Outcome.faulty(Fault.of("", "'" + text + "'", "a dimension's name and its mm, as 'name 1840'", ""))
                : Outcome.sound(new OrderBuilder(order).measuredMm(measured).build());
    }
}
