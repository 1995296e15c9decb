package boltlore.trades.costing;

import boltlore.bill.Bill;
import boltlore.bill.Costs;
import boltlore.bill.Item;
import boltlore.catalogue.Buying;
import boltlore.catalogue.Offer;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Gives each bought part that has price breaks the price of the quantity that its kit orders of the preferred supplier: scrap
 * included, in whole packs, at least the least order. From here on that is the part's cost, in every sum and on every sheet.
 * What other orders need does not count, so that no price depends on what else is in the shop; nor do extras, which pay
 * the price of the smallest quantity.
 */
public final class QuantityPrices {

    private final Map<PartNumber, BigDecimal> quantities = new HashMap<>();

    private QuantityPrices() {}

    /** The same bill where no part has price breaks. */
    static Bill of(Bill bill) {
        if (bill.all().allMatch(item -> breaks(item.part()).isEmpty())) {
            return bill;
        }
        QuantityPrices prices = new QuantityPrices();
        bill.items().forEach(prices::count);
        return new Bill(
                bill.order(),
                bill.resolved(),
                bill.items().stream().map(prices::priced).toList());
    }

    /** Prices by quantity of the part's preferred supplier; empty where the price is one. */
    public static List<Offer.PriceBreak> breaks(Part part) {
        Buying buying = part.buying();
        return buying == null ? List.of() : buying.breaks();
    }

    /** What comes inside a bought part is not bought as such. */
    private void count(Item item) {
        quantities.merge(item.part().number(), item.quantity(), BigDecimal::add);
        if (item.part().source() != Source.BUY) {
            item.inside().forEach(this::count);
        }
    }

    private Item priced(Item item) {
        return new Item(
                item.level(),
                item.position(),
                item.line(),
                priced(item.part()),
                item.finish(),
                item.quantity(),
                item.origin(),
                item.picked(),
                item.inside().stream().map(this::priced).toList());
    }

    private Part priced(Part part) {
        Buying buying = part.buying();
        BigDecimal quantity = quantities.get(part.number());
        if (buying == null || quantity == null || buying.breaks().isEmpty()) {
            return part;
        }
        BigDecimal ordered = buying.toOrder(Costs.toIssue(quantity, part.scrapPercent()));
        return part.costing(buying.offers().get(0).at(ordered).homeCost());
    }
}
