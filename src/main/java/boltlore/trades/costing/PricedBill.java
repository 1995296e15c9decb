package boltlore.trades.costing;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A bill with its costs, times and price.
 *
 * @param rows of all levels in the bill's order
 * @param kitPrice of the kit alone
 * @param extras outside the kit
 */
public record PricedBill(
        Bill bill, Catalogue catalogue, List<PricedItem> rows, Price kitPrice, List<PricedExtra> extras) {

    public Currency currency() {
        return catalogue.workshop().currency();
    }

    public Totals totals() {
        return Totals.of(rows);
    }

    /** Totals by sub-system in the workshop's printing order; one without a row does not appear. */
    public Map<String, Totals> bySubSystem() {
        Map<String, Totals> sums = new LinkedHashMap<>();
        rowsBySubSystem().forEach((subSystem, some) -> sums.put(subSystem, Totals.of(some)));
        return sums;
    }

    /** Rows by sub-system in the workshop's printing order; one without a row does not appear. */
    public Map<String, List<PricedItem>> rowsBySubSystem() {
        Map<String, List<PricedItem>> found = rows.stream().collect(Collectors.groupingBy(PricedItem::subSystem));
        Map<String, List<PricedItem>> groups = new LinkedHashMap<>();
        for (String subSystem : catalogue.workshop().subSystems()) {
            List<PricedItem> some = found.get(subSystem);
            if (some != null) {
                groups.put(subSystem, some);
            }
        }
        return groups;
    }

    public BigDecimal extrasCost() {
        return extras.stream().map(PricedExtra::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    public BigDecimal extrasPrice() {
        return extras.stream().map(PricedExtra::price).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** What the customer pays: kit and extras. */
    public BigDecimal totalPrice() {
        return kitPrice.price().add(extrasPrice());
    }

    /** Calendar days of the longest chain, from ordering its first part to shipping the kit. */
    public int leadDays() {
        return rows.stream()
                .mapToInt(row -> row.timing().startDays())
                .max()
                .orElse(catalogue.workshop().assemblyDays());
    }
}
