package boltlore.cli;

import boltlore.book.db.Reading;
import boltlore.book.orders.KeptFinding;
import boltlore.findings.Sentences;
import java.util.List;
import java.util.stream.Stream;

/** Says over a list that is made of the book what stops its orders: whoever reads it reads no other sheet. */
final class StoppedInBook {

    private StoppedInBook() {}

    /** Lines 'BL-1003: STOP, not to be cut, …: the front axle …', one for each; none where nothing stops. */
    static List<String> lines(Reading reading, Stream<String> orders) {
        return orders.distinct()
                .sorted()
                .flatMap(name -> reading.orders().find(name).stream())
                .flatMap(order -> KeptFinding.of(reading, order).stream()
                        .filter(KeptFinding::stops)
                        .map(found -> order.name() + ": " + lead(found) + ": " + found.says()))
                .distinct()
                .toList();
    }

    private static String lead(KeptFinding found) {
        return Sentences.word(found.by().equals("ship") ? "stopped.ship" : "stopped", "en");
    }

    static void told(Screen screen, Reading reading, Stream<String> orders) {
        lines(reading, orders).forEach(line -> screen.wrapped(0, line));
    }
}
