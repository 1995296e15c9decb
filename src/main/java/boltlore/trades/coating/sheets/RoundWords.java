package boltlore.trades.coating.sheets;

import boltlore.catalogue.Workshop;
import boltlore.order.Order;
import boltlore.trades.coating.CoatPlanner;
import boltlore.trades.coating.Round;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/** What a round is, in words. */
final class RoundWords {

    private RoundWords() {}

    /** 'Round 2: 14 orders needed from 2026-06-01 to 2026-06-12'. */
    static String of(Round round, Workshop workshop) {
        List<LocalDate> needs = round.orders().stream()
                .map((Order order) -> CoatPlanner.needBy(order, workshop.assemblyDays()))
                .filter(Objects::nonNull)
                .sorted(Comparator.naturalOrder())
                .toList();
        String orders = CoatWords.count(round.orders().size(), "order", "orders");
        return "Round " + round.number() + ": " + orders + needed(needs);
    }

    private static String needed(List<LocalDate> needs) {
        if (needs.isEmpty()) {
            return " without a date";
        }
        LocalDate first = needs.get(0);
        LocalDate last = needs.get(needs.size() - 1);
        return " needed " + (first.equals(last) ? "on " + first : "from " + first + " to " + last);
    }
}
