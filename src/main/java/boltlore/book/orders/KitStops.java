package boltlore.book.orders;

import boltlore.book.db.Reading;
import boltlore.findings.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What stops orders of a list that is made of the book: whoever reads it reads no other sheet. */
public final class KitStops {

    private KitStops() {}

    /** Lines 'BL-1003: STOP, not to be cut, …: the front axle …', one for each; none where nothing stops. */
    public static List<String> lines(Reading reading, Stream<String> orders) {
        List<String> lines = new ArrayList<>();
        of(reading, orders).forEach((order, stops) -> stops.forEach(stop -> lines.add(order + ": " + stop)));
        return List.copyOf(lines);
    }

    /** By order, 'STOP, not to be cut, …: the front axle …' each; no order that nothing stops. */
    public static SortedMap<String, List<String>> of(Reading reading, Stream<String> orders) {
        SortedMap<String, List<String>> stopped = new TreeMap<>();
        orders.distinct().flatMap(name -> reading.orders().find(name).stream()).forEach(order -> {
            List<String> stops = KeptFinding.of(reading, order).stream()
                    .filter(KeptFinding::stops)
                    .map(found -> lead(found) + ": " + found.says())
                    .distinct()
                    .toList();
            if (!stops.isEmpty()) {
                stopped.put(order.name(), stops);
            }
        });
        return stopped;
    }

    private static String lead(KeptFinding found) {
        return Sentences.word(found.by().equals("ship") ? "stopped.ship" : "stopped", "en");
    }
}
