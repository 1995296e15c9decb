package boltlore.netting;

import java.math.BigDecimal;
import java.util.List;

/**
 * What netting must know of an item. Quantities are in the item's unit.
 *
 * @param onHand at the beginning, not reserved for anything that is not asked for here
 * @param safetyStock below which the projected stock shall not fall, from the first period on in which an order of now can be in
 * @param leadPeriods from releasing an order until it is in, 0 or more
 * @param scrapPercent share of what is issued that is lost, 0 to under 100
 * @param contains what one of it is made of; empty where it is bought
 * @param scheduled receipts that are on their way already
 */
public record PlanningData(
        BigDecimal onHand,
        BigDecimal safetyStock,
        int leadPeriods,
        LotRule lot,
        BigDecimal scrapPercent,
        List<Component> contains,
        List<ScheduledReceipt> scheduled) {

    /** Nothing at hand, on its way or kept for safety; available at once, lot for lot. */
    public static final PlanningData NONE = new PlanningData(
            BigDecimal.ZERO, BigDecimal.ZERO, 0, LotRule.AS_NEEDED, BigDecimal.ZERO, List.of(), List.of());

    public PlanningData {
        contains = List.copyOf(contains);
        scheduled = List.copyOf(scheduled);
    }

    /** So many of another item in one of this. */
    public record Component(StockItem item, BigDecimal quantity) {}

    /**
     * An order that has been placed.
     *
     * @param name by which people know it
     * @param period in which it is expected
     */
    public record ScheduledReceipt(String name, int period, BigDecimal quantity) {}
}
