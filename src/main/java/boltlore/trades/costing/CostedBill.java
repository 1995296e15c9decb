package boltlore.trades.costing;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.trades.costing.path.KitTimes;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A bill with its direct costs and its times: bought parts, made parts at the part master's cost, coating. What it sells for
 * is worked out of its full cost, never of these.
 *
 * @param rows of all levels in the bill's order
 * @param extras outside the kit
 */
public record CostedBill(Bill bill, Catalogue catalogue, KitTimes times, List<ItemCost> rows, List<ExtraCost> extras) {

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
    public Map<String, List<ItemCost>> rowsBySubSystem() {
        Map<String, List<ItemCost>> found = rows.stream().collect(Collectors.groupingBy(ItemCost::subSystem));
        Map<String, List<ItemCost>> groups = new LinkedHashMap<>();
        for (String subSystem : catalogue.workshop().subSystems()) {
            List<ItemCost> some = found.get(subSystem);
            if (some != null) {
                groups.put(subSystem, some);
            }
        }
        return groups;
    }

    public BigDecimal extrasCost() {
        return extras.stream().map(ExtraCost::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Calendar days of the longest chain, from ordering its first part to shipping the kit. */
    public int leadDays() {
        return times.path().days();
    }
}
