package boltlore.desk.stores;

import boltlore.book.stores.PurchaseDesk;
import boltlore.measure.Money;
import boltlore.trades.buying.PurchaseLine;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is to be ordered of a supplier.
 *
 * @param cost of all of it before tax, in the supplier's currency
 * @param homeCost the same in the workshop's
 * @param lateDays by which the first of it is past due
 */
public record ToOrder(
        String name, int parts, BigDecimal cost, String currency, BigDecimal homeCost, String first, int lateDays) {

    /** What must be ordered of each supplier by a day. */
    static List<ToOrder> of(Stream<PurchaseLine> planned, LocalDate until, Currency home) {
        return planned
                .filter(line -> !line.supplier().isEmpty() && !line.orderBy().isAfter(until))
                .collect(Collectors.groupingBy(PurchaseLine::supplier, TreeMap::new, Collectors.toList()))
                .entrySet()
                .stream()
                .map(each -> of(each.getKey(), each.getValue(), home))
                .toList();
    }

    private static ToOrder of(String name, List<PurchaseLine> lines, Currency home) {
        LocalDate first = lines.stream()
                .map(PurchaseLine::orderBy)
                .min(LocalDate::compareTo)
                .orElseThrow();
        PurchaseDesk.Sum sum = PurchaseDesk.sum(lines, home);
        return new ToOrder(
                name,
                (int) lines.stream().map(PurchaseLine::part).distinct().count(),
                sum.cost(),
                lines.get(0).currency().getCurrencyCode(),
                sum.home(),
                first.toString(),
                lines.stream().mapToInt(PurchaseLine::lateDays).max().orElse(0));
    }

    /** What it comes to in the supplier's currency. */
    public String asks() {
        return Money.says(cost, Currency.getInstance(currency));
    }
}
