package boltlore.trades.buying;

import boltlore.netting.Netting.Demand;
import boltlore.netting.PlanningData.ScheduledReceipt;
import boltlore.netting.StockItem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * What the stores hold and wait for on a day. Quantities are in each part's unit.
 *
 * @param onHand what lies there and may be used
 * @param coming what is ordered, by the day on which it is expected, counted from 1970-01-01
 * @param issued what each order has got already
 * @param besides what is asked for beside the kits of orders: service parts, and what was short when a kit was shipped
 */
public record StoresNow(
        LocalDate today,
        Map<StockItem, BigDecimal> onHand,
        Map<StockItem, List<ScheduledReceipt>> coming,
        Map<String, Map<StockItem, BigDecimal>> issued,
        List<Demand> besides) {

    /** Nothing lies there, nothing comes. */
    public static StoresNow empty(LocalDate today) {
        return new StoresNow(today, Map.of(), Map.of(), Map.of(), List.of());
    }

    int now() {
        return day(today);
    }

    static int day(LocalDate date) {
        return Math.toIntExact(date.toEpochDay());
    }

    static LocalDate date(int day) {
        return LocalDate.ofEpochDay(day);
    }

    BigDecimal issued(String order, StockItem item) {
        return issued.getOrDefault(order, Map.of()).getOrDefault(item, BigDecimal.ZERO);
    }
}
