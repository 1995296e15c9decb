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
import boltlore.order.Order;
import boltlore.trades.KitInWork;
import boltlore.trades.costing.path.StepDays;
import boltlore.trades.picking.Units;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * All open orders netted against the stores.
 *
 * @param orders by when they are due
 * @param purchases what to buy, by supplier, then by the day on which it must be ordered
 * @param behind orders behind an asker that stands for all of a day, by name, with what each asks for; none where each asks itself
 */
public record ShopPlan(
        Catalogue catalogue,
        StoresNow stores,
        List<Asking> orders,
        Netting netting,
        List<PurchaseLine> purchases,
        Function<String, SortedMap<String, BigDecimal>> behind) {

    /**
     * An order that asks.
     *
     * @param due the day on which the kit is due; where none was agreed, the first on which it can be ready
     * @param parts still to get, each in its finish
     */
    public record Asking(String order, String customer, LocalDate due, boolean agreed, int parts) {}

    /** Orders that have got nothing yet. */
    public static ShopPlan of(List<KitInWork> kits, StoresNow stores) {
        Map<PartNumber, Part> parts = new HashMap<>();
        Map<StockItem, List<Component>> madeOf = new HashMap<>();
        List<Demand> demands = new ArrayList<>();
        List<Asking> orders = new ArrayList<>();
        kits.stream()
                .map(kit -> OrderNeeds.of(kit, stores.today()))
                .sorted(Comparator.comparing(OrderNeeds::due)
                        .thenComparing(each -> each.kit().order().name()))
                .forEach(each -> {
                    parts.putAll(each.kit().catalogue().parts());
                    madeOf.putAll(each.madeOf());
                    demands.addAll(each.needs());
                    Order order = each.kit().order();
                    orders.add(new Asking(order.name(), order.customer(), each.due(), order.due() != null, (int)
                            each.needs().stream().map(Demand::item).distinct().count()));
                });
        return of(orders, demands, madeOf, parts, kits.get(0).catalogue(), stores);
    }

    /**
     * Bought as that catalogue says, whatever others the kits were frozen with: suppliers and packs are those of today.
     *
     * @param madeOf what one of an item is made of, in the kits
     * @param parts that the kits were frozen with: one that has left the catalogue since is still the part that it was
     */
    public static ShopPlan of(
            List<Asking> orders,
            List<Demand> demands,
            Map<StockItem, List<Component>> madeOf,
            Map<PartNumber, Part> parts,
            Catalogue today,
            StoresNow stores) {
        Catalogue catalogue = withParts(today, parts);
        Netting netting = net(demands, madeOf, stores, catalogue);
        return new ShopPlan(
                catalogue,
                stores,
                orders,
                netting,
                PurchaseLine.of(netting, catalogue),
                asker -> Collections.emptySortedMap());
    }

    /** The same plan, which can tell who stands behind those that ask. */
    public ShopPlan telling(List<Asking> asking, Function<String, SortedMap<String, BigDecimal>> whoStandsBehind) {
        return new ShopPlan(catalogue, stores, asking, netting, purchases, whoStandsBehind);
    }

    /**
     * What it would cost to buy for each order by itself, with nothing in stock; home currency, rounded line by line.
     *
     * @param each all that one order asks for
     */
    public BigDecimal apart(List<List<Demand>> each) {
        Map<StockItem, List<Component>> madeOf = new HashMap<>();
        netting.items().forEach(item -> madeOf.put(item.item(), item.data().contains()));
        StoresNow nothing = StoresNow.empty(stores.today());
        return each.stream()
                .map(alone -> of(List.of(), alone, madeOf, Map.of(), catalogue, nothing)
                        .together())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static Catalogue withParts(Catalogue today, Map<PartNumber, Part> kept) {
        if (today.parts().keySet().containsAll(kept.keySet())) {
            return today;
        }
        Map<PartNumber, Part> parts = new HashMap<>(kept);
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

    private static Netting net(
            List<Demand> demands, Map<StockItem, List<Component>> ofKits, StoresNow stores, Catalogue catalogue) {
        Map<StockItem, List<Component>> madeOf = new HashMap<>();
        catalogue.stores().kept().keySet().forEach(part -> madeOf.put(StockItem.bare(part), List.of()));
        demands.stream()
                .map(Demand::item)
                .distinct()
                .filter(item -> !ofKits.containsKey(item))
                .forEach(item -> madeOf.putAll(OrderNeeds.madeOf(item, catalogue)));
        madeOf.putAll(ofKits);
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
        Set<StockItem> coated = coated();
        return netting.planned().stream()
                .filter(receipt -> part(receipt).source() == Source.MAKE && !coated.contains(receipt.item()))
                .toList();
    }

    /** What to bring to the coating shop, by the day on which it must be there. */
    public List<PlannedReceipt> toCoat() {
        Set<StockItem> coated = coated();
        return netting.planned().stream()
                .filter(receipt -> coated.contains(receipt.item()))
                .toList();
    }

    private Set<StockItem> coated() {
        return netting.items().stream()
                .filter(ShopPlan::coats)
                .map(ItemPlan::item)
                .collect(Collectors.toSet());
    }

    /** Whether it is made by coating its own bare part. */
    private static boolean coats(ItemPlan plan) {
        return isCoated(plan.item())
                && plan.data().contains().size() == 1
                && plan.data().contains().get(0).item().equals(OrderNeeds.bare(plan.item()));
    }

    /** Items of which something that is ordered is needed before it is expected. */
    public List<ItemPlan> toHurry() {
        return netting.items().stream()
                .filter(plan -> !plan.brought().isEmpty())
                .toList();
    }

    /** What is to be done: 'order', 'make' or 'coat'. */
    public String verb(PlannedReceipt receipt) {
        boolean coats = netting.of(receipt.item()).filter(ShopPlan::coats).isPresent();
        return coats ? "coat" : part(receipt).source() == Source.MAKE ? "make" : "order";
    }

    /** Which orders a receipt is for, and how much of it stays in stock. */
    public Netting.Asked askedBy(PlannedReceipt receipt) {
        return netting.askedBy(receipt, behind);
    }

    /** 'BL-1001 4, BL-1002 2, stock 4'. */
    public String forWhom(PlannedReceipt receipt) {
        return PurchaseLine.says(askedBy(receipt));
    }

    Part part(PlannedReceipt receipt) {
        return catalogue.part(receipt.item().part());
    }

    /** What is bought together costs, in the workshop's currency. */
    public BigDecimal together() {
        return purchases.stream().map(PurchaseLine::homeCost).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
