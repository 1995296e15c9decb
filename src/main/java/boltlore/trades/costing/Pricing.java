package boltlore.trades.costing;

import boltlore.bill.Bill;
import boltlore.bill.Costs;
import boltlore.bill.Item;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Source;
import boltlore.order.Extra;
import boltlore.trades.coating.CoatingCost;
import boltlore.trades.coating.ExtraCoating;
import boltlore.trades.costing.path.KitTimes;
import boltlore.trades.costing.path.Timing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Works out row by row what a bill costs directly and when each part must be on its way. */
public final class Pricing {

    private final KitTimes times;
    private final MinorUnit unit;
    private final Function<Item, BigDecimal> coatingCost;
    private final List<ItemCost> rows = new ArrayList<>();

    private Pricing(KitTimes times, Catalogue catalogue, Function<Item, BigDecimal> coatingCost) {
        this.times = times;
        this.unit = new MinorUnit(catalogue.workshop().currency());
        this.coatingCost = coatingCost;
    }

    /** With what coating costs in this workshop. */
    public static CostedBill cost(Bill bill, Catalogue catalogue) {
        return cost(
                bill, catalogue, item -> coating(item, catalogue), extra -> ExtraCoating.ofOne(extra, bill, catalogue));
    }

    private static BigDecimal coating(Item item, Catalogue catalogue) {
        Finish finish = catalogue.finishes().get(item.finish());
        return finish == null ? BigDecimal.ZERO : CoatingCost.compute(item, finish, catalogue);
    }

    /**
     * With coating at other costs.
     *
     * @param coatingCost what coating an item's whole quantity costs, unrounded; asked of coated items only
     * @param coatingOfExtra what coating one of an extra costs, unrounded; left out where the order tells the extra's cost
     */
    static CostedBill cost(
            Bill bill,
            Catalogue catalogue,
            Function<Item, BigDecimal> coatingCost,
            Function<Extra, BigDecimal> coatingOfExtra) {
        Bill priced = QuantityPrices.of(bill);
        KitTimes times = KitTimes.of(priced, catalogue);
        Pricing pricing = new Pricing(times, catalogue, coatingCost);
        priced.items().forEach(item -> pricing.row(item, null));
        List<ExtraCost> extras = bill.order().extra().stream()
                .map(extra -> ExtraCost.of(extra, catalogue, coatingOfExtra.apply(extra)))
                .toList();
        return new CostedBill(priced, catalogue, times, List.copyOf(pricing.rows), extras);
    }

    /** @param bought when what it comes inside of must be there, where that is bought; else null */
    private void row(Item item, @Nullable Timing bought) {
        boolean inside = bought != null;
        Timing timing = bought == null ? times.of(item) : bought;
        BigDecimal extended = inside ? BigDecimal.ZERO : Costs.own(item);
        BigDecimal coating = item.coated() && !inside ? coatingCost.apply(item) : BigDecimal.ZERO;
        rows.add(new ItemCost(item, inside, unit.round(extended), unit.round(coating), timing));
        boolean holds = inside || item.part().source() == Source.BUY;
        item.inside().forEach(child -> row(child, holds ? timing : null));
    }
}
