package boltlore.trades.buying;

import boltlore.catalogue.Buying;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.measure.PartNumber;
import boltlore.netting.ItemPlan;
import boltlore.netting.LotRule;
import boltlore.netting.Netting;
import boltlore.netting.Netting.Demand;
import boltlore.netting.PlannedReceipt;
import boltlore.netting.PlanningData;
import boltlore.netting.PlanningData.Component;
import boltlore.netting.StockItem;
import boltlore.trades.KitInWork;
import boltlore.trades.costing.path.StepDays;
import boltlore.trades.picking.Units;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * All open orders netted against the stores.
 *
 * @param purchases what to buy, by supplier, then by the day on which it must be ordered
 * @param apart what it would cost to buy for each order by itself, with nothing in stock; home currency, rounded line by line
 */
public record ShopPlan(
        Catalogue catalogue,
        StoresNow stores,
        List<OrderNeeds> orders,
        Netting netting,
        List<PurchaseLine> purchases,
        BigDecimal apart) {

    /** Orders by when they are due. */
    public static ShopPlan of(List<KitInWork> kits, StoresNow stores) {
        return of(kits, kits.get(0).catalogue(), stores);
    }

    /** Bought as that catalogue says, whatever others the kits were frozen with: suppliers and packs are those of today. */
    public static ShopPlan of(List<KitInWork> kits, Catalogue today, StoresNow stores) {
        Catalogue catalogue = withParts(today, kits);
        List<OrderNeeds> orders = kits.stream()
                .map(kit -> OrderNeeds.of(kit, stores))
                .sorted(Comparator.comparing(OrderNeeds::due)
                        .thenComparing(each -> each.kit().order().name()))
                .toList();
        Netting netting = net(orders, stores, catalogue);
        BigDecimal apart = kits.stream()
                .map(kit -> OrderNeeds.of(kit, StoresNow.empty(stores.today())))
                .map(alone -> net(List.of(alone), StoresNow.empty(stores.today()), catalogue))
                .flatMap(alone -> PurchaseLine.of(alone, catalogue).stream())
                .map(PurchaseLine::homeCost)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return new ShopPlan(catalogue, stores, orders, netting, PurchaseLine.of(netting, catalogue), apart);
    }

    /** A part that a kit was frozen with and that has left the catalogue since is still the part that it was. */
    private static Catalogue withParts(Catalogue today, List<KitInWork> kits) {
        Map<PartNumber, Part> parts = new HashMap<>();
        kits.forEach(kit -> parts.putAll(kit.catalogue().parts()));
        if (today.parts().keySet().containsAll(parts.keySet())) {
            return today;
        }
        parts.putAll(today.parts());
        return new Catalogue(
                today.workshop(),
                today.finishes(),
                today.materials(),
                parts,
                today.families(),
                today.revision(),
                today.prices(),
                today.shipping(),
                today.capacity(),
                today.stores(),
                today.house());
    }

    private static Netting net(List<OrderNeeds> orders, StoresNow stores, Catalogue catalogue) {
        List<Demand> demands = Stream.concat(
                        orders.stream().flatMap(order -> order.needs().stream()), stores.besides().stream())
                .toList();
        Map<StockItem, List<Component>> madeOf = new HashMap<>();
        catalogue.stores().kept().keySet().forEach(part -> madeOf.put(StockItem.bare(part), List.of()));
        stores.besides().forEach(demand -> madeOf.putAll(OrderNeeds.madeOf(demand.item(), catalogue)));
        orders.forEach(order -> madeOf.putAll(order.madeOf()));
        Map<StockItem, PlanningData> data = new HashMap<>();
        madeOf.forEach((item, contents) -> data.put(item, data(item, contents, stores, catalogue)));
        return Netting.of(demands, data, stores.now());
    }

    /** Coating is a step of its own, from the bare part to the one in its finish. */
    private static PlanningData data(StockItem item, List<Component> contents, StoresNow stores, Catalogue catalogue) {
        Part part = catalogue.part(item.part());
        boolean coating =
                contents.size() == 1 && contents.get(0).item().equals(OrderNeeds.bare(item)) && isCoated(item);
        return new PlanningData(
                stores.onHand().getOrDefault(item, BigDecimal.ZERO),
                isCoated(item) ? BigDecimal.ZERO : catalogue.stores().safetyStock(part.number()),
                coating ? new StepDays(catalogue).turnRound(part, item.finish()) : part.leadDays(),
                lot(part, coating, catalogue),
                coating ? BigDecimal.ZERO : part.scrapPercent(),
                contents,
                stores.coming().getOrDefault(item, List.of()));
    }

    private static boolean isCoated(StockItem item) {
        return !item.finish().isEmpty();
    }

    /** Bought: whole packs, the least order, the needs of some days. Made: as needed, whole pieces. */
    private static LotRule lot(Part part, boolean coating, Catalogue catalogue) {
        BigDecimal piece = Units.measured(part.unit()) ? BigDecimal.ZERO : BigDecimal.ONE;
        if (coating || part.source() == Source.MAKE) {
            return new LotRule(BigDecimal.ZERO, piece, 1);
        }
        Buying buying = part.buying();
        BigDecimal least = buying == null || buying.minimumOrder() == null ? BigDecimal.ZERO : buying.minimumOrder();
        BigDecimal pack = buying == null || buying.packOf() == null ? BigDecimal.ONE : buying.packOf();
        return new LotRule(least, pack, 1).covering(catalogue.stores().coverDays(part.number()));
    }

    /** What to make, those first that must be begun first; what to coat is apart. */
    public List<PlannedReceipt> toMake() {
        return netting.planned().stream()
                .filter(receipt -> part(receipt).source() == Source.MAKE && !coats(receipt))
                .toList();
    }

    /** What to bring to the coating shop, by the day on which it must be there. */
    public List<PlannedReceipt> toCoat() {
        return netting.planned().stream().filter(this::coats).toList();
    }

    private boolean coats(PlannedReceipt receipt) {
        return netting.of(receipt.item())
                .map(plan -> plan.data().contains())
                .filter(contents -> isCoated(receipt.item()))
                .filter(contents ->
                        contents.size() == 1 && contents.get(0).item().equals(OrderNeeds.bare(receipt.item())))
                .isPresent();
    }

    /** Items of which something that is ordered is needed before it is expected. */
    public List<ItemPlan> toHurry() {
        return netting.items().stream()
                .filter(plan -> !plan.brought().isEmpty())
                .toList();
    }

    /** What is to be done: 'order', 'make' or 'coat'. */
    public String verb(PlannedReceipt receipt) {
        return coats(receipt) ? "coat" : part(receipt).source() == Source.MAKE ? "make" : "order";
    }

    /** 'BL-1001 4, BL-1002 2, stock 4'. */
    public String forWhom(PlannedReceipt receipt) {
        return PurchaseLine.says(netting.askedBy(receipt));
    }

    Part part(PlannedReceipt receipt) {
        return catalogue.part(receipt.item().part());
    }

    /** What is bought together costs, in the workshop's currency. */
    public BigDecimal together() {
        return purchases.stream().map(PurchaseLine::homeCost).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
