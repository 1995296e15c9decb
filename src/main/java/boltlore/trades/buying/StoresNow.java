package boltlore.trades.buying;

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
 */
public record StoresNow(
        LocalDate today, Map<StockItem, BigDecimal> onHand, Map<StockItem, List<ScheduledReceipt>> coming) {

    /** Nothing lies there, nothing comes. */
    public static StoresNow empty(LocalDate today) {
        return new StoresNow(today, Map.of(), Map.of());
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
}
