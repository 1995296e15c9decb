package boltlore.trades.costing;

import boltlore.bill.Bill;
import boltlore.bill.Costs;
import boltlore.bill.Item;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Partner;
import boltlore.catalogue.Source;
import boltlore.order.Extra;
import boltlore.order.Order;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Prices a bill row by row. */
public final class Pricing {

    private final LeadTimes leadTimes;
    private final MinorUnit unit;
    private final Function<Item, BigDecimal> coatingCost;
    private final List<PricedItem> rows = new ArrayList<>();

    private Pricing(Catalogue catalogue, Function<Item, BigDecimal> coatingCost) {
        this.leadTimes = new LeadTimes(catalogue);
        this.unit = new MinorUnit(catalogue.workshop().currency());
        this.coatingCost = coatingCost;
    }

    /**
     * Prices the bill.
     *
     * @param coatingCost what coating an item's whole quantity costs, unrounded; asked of coated items only
     */
    public static PricedBill of(Bill bill, Catalogue catalogue, Function<Item, BigDecimal> coatingCost) {
        return of(bill, catalogue, coatingCost, extra -> BigDecimal.ZERO);
    }

    /**
     * Prices the bill of an order whose extras may be coated too.
     *
     * @param coatingCost what coating an item's whole quantity costs, unrounded; asked of coated items only
     * @param coatingOfExtra what coating one of an extra costs, unrounded; left out where the order tells the extra's cost
     */
    public static PricedBill of(
            Bill bill,
            Catalogue catalogue,
            Function<Item, BigDecimal> coatingCost,
            Function<Extra, BigDecimal> coatingOfExtra) {
        Pricing pricing = new Pricing(catalogue, coatingCost);
        bill.items().forEach(item -> pricing.row(item, false, pricing.leadTimes.ofKitPart(item.part(), item.finish())));
        BigDecimal markUpPercent = markUpPercent(bill.order(), catalogue);
        List<PricedItem> rows = List.copyOf(pricing.rows);
        Price price = Price.of(Totals.of(rows).cost(), markUpPercent, pricing.unit);
        List<PricedExtra> extras = bill.order().extra().stream()
                .map(extra -> PricedExtra.of(extra, catalogue, markUpPercent, coatingOfExtra.apply(extra)))
                .toList();
        return new PricedBill(bill, catalogue, rows, price, extras);
    }

    /** The partner's mark-up where the order goes through a partner that has one, else the workshop's. */
    static BigDecimal markUpPercent(Order order, Catalogue catalogue) {
        Partner partner = catalogue.workshop().partners().get(order.partner());
        BigDecimal own = partner == null ? null : partner.markUpPercent();
        return own != null ? own : catalogue.workshop().markUpPercent();
    }

    private void row(Item item, boolean insideBought, Timing timing) {
        BigDecimal extended = insideBought ? BigDecimal.ZERO : Costs.own(item);
        BigDecimal coating = item.coated() && !insideBought ? coatingCost.apply(item) : BigDecimal.ZERO;
        rows.add(new PricedItem(item, insideBought, unit.round(extended), unit.round(coating), timing));
        boolean bought = insideBought || item.part().source() == Source.BUY;
        for (Item child : item.inside()) {
            row(child, bought, bought ? timing : leadTimes.ofChild(child.part(), child.finish(), timing));
        }
    }
}
