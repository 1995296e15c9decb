package boltlore.trades.costing;

import boltlore.bill.Costs;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.PartNumber;
import boltlore.trades.costing.path.Timing;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * A part to buy for this order; quantities in the part's unit.
 *
 * @param needed in the kit, its extras and the spares of its bags
 * @param extra how many of them are extras, outside the kit
 * @param spares how many of them are spares, which no price counts
 * @param withScrap needed / (1 − scrap)
 * @param ordered rounded up to whole packs and to the least order
 * @param cost of what is ordered, rounded half-up to the minor unit; what is left over goes to the stores
 */
public record Purchase(
        Part part,
        BigDecimal needed,
        BigDecimal extra,
        BigDecimal spares,
        BigDecimal withScrap,
        BigDecimal ordered,
        BigDecimal cost,
        Timing timing) {

    private static final Comparator<Purchase> BY_SUPPLIER = Comparator.comparing(Purchase::supplier)
            .thenComparing(purchase -> -purchase.timing().startDays())
            .thenComparing(purchase -> purchase.part().number());

    /** By supplier; within a supplier what must be ordered first stands first. */
    public static List<Purchase> of(CostedBill costed) {
        return of(costed, Map.of());
    }

    /**
     * The same with spares.
     *
     * @param spares that are handed out beside the kit, by part
     */
    public static List<Purchase> of(CostedBill costed, Map<PartNumber, BigDecimal> spares) {
        MinorUnit unit = new MinorUnit(costed.currency());
        return Demand.of(costed, Source.BUY).values().stream()
                .map(demand -> of(demand, spares.getOrDefault(demand.part().number(), BigDecimal.ZERO), unit))
                .sorted(BY_SUPPLIER)
                .toList();
    }

    private static Purchase of(Demand demand, BigDecimal spares, MinorUnit unit) {
        Part part = demand.part();
        BigDecimal needed = demand.quantity().add(spares);
        BigDecimal withScrap = Costs.toIssue(needed, part.scrapPercent());
        BigDecimal ordered = part.buying() == null
                ? withScrap.setScale(0, RoundingMode.UP)
                : part.buying().toOrder(withScrap);
        BigDecimal cost = unit.round(ordered.multiply(part.cost()));
        return new Purchase(part, needed, demand.extraQuantity(), spares, withScrap, ordered, cost, demand.timing());
    }

    /**
     * What the kit alone asks for, scrap included and spares not: the quantity whose price is paid. Extras alone pay the first
     * price.
     */
    public BigDecimal kitWithScrap() {
        return Costs.toIssue(needed.subtract(extra).subtract(spares), part.scrapPercent());
    }

    public String supplier() {
        return part.buying() == null ? "" : part.buying().supplier();
    }

    public String orderCode() {
        return part.buying() == null ? "" : part.buying().orderCode();
    }
}
