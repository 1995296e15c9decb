package boltlore.book.stores;

import boltlore.book.Entry;
import boltlore.book.KitLine;
import boltlore.book.OrderHappening.Drafted;
import boltlore.book.OrderHappening.Quoted;
import boltlore.book.OrderState;
import boltlore.book.PersonHappening;
import boltlore.book.PurchaseHappening;
import boltlore.book.Subject;
import boltlore.book.db.DayNeeds;
import boltlore.book.db.Reading;
import boltlore.book.db.Stock;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.faults.Outcome;
import boltlore.measure.PartNumber;
import boltlore.netting.Netting.Demand;
import boltlore.netting.PlanningData.Component;
import boltlore.netting.StockItem;
import boltlore.trades.KitInWork;
import boltlore.trades.buying.ShopPlan;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What all owed orders and service orders lack together, out of the sums of the book: what each has still to get stands there,
 * and what an assembly is made of in the lines of the kits, so that no kit is resolved again however many orders are owed.
 */
public final class OwedPlan {

    private static final Set<String> LEAVES_IT = Set.of(Drafted.KIND, Quoted.KIND);

    private final Reading reading;
    private final Catalogue today;
    private final Map<StockItem, List<Component>> madeOf = new HashMap<>();
    private final SortedMap<PartNumber, String> gone = new TreeMap<>();

    private OwedPlan(Reading reading, Catalogue today) {
        this.reading = reading;
        this.today = today;
    }

    /**
     * The plan; empty where nothing is owed.
     *
     * @param today suppliers and packs are those of this catalogue
     * @param on day from which it is planned
     * @param kits as they were frozen: asked for orders of parts that have left the catalogue since
     */
    public static Outcome<Optional<ShopPlan>> of(
            Reading reading, Catalogue today, LocalDate on, Function<List<String>, Outcome<List<KitInWork>>> kits) {
        List<Demand> demands = reading.dayNeeds().byDay().stream()
                .map(need -> new Demand(
                        PurchaseDesk.item(need.part(), need.finish()),
                        Math.toIntExact(need.day().toEpochDay()),
                        need.quantity(),
                        need.key()))
                .toList();
        List<OrderState> owed = OrderState.ALL.stream().filter(OrderState::owed).toList();
        if (demands.isEmpty() && reading.orders().in(owed, 1).isEmpty()) {
            return Outcome.sound(Optional.empty());
        }
        return new OwedPlan(reading, today).plan(demands, on, kits);
    }

    private Outcome<Optional<ShopPlan>> plan(
            List<Demand> demands, LocalDate on, Function<List<String>, Outcome<List<KitInWork>>> kits) {
        reading.dayNeeds().askedLast().forEach(this::describe);
        List<String> old = gone.values().stream().distinct().toList();
        return (old.isEmpty() ? Outcome.<List<KitInWork>>sound(List.of()) : kits.apply(old)).then(frozen -> {
            Map<PartNumber, Part> parts = new HashMap<>();
            frozen.forEach(kit -> gone.keySet().stream()
                    .filter(kit.catalogue().parts()::containsKey)
                    .forEach(part -> parts.put(part, kit.catalogue().part(part))));
            return Outcome.sound(
                    Optional.of(ShopPlan.of(List.of(), demands, madeOf, parts, today, PurchaseDesk.now(reading, on))));
        });
    }

    /** The same plan with all orders that ask; it can be asked who stands behind each demand after the reading has ended. */
    public static ShopPlan telling(Reading reading, ShopPlan plan) {
        List<ShopPlan.Asking> orders = reading.needs().owed().stream()
                .map(owed -> new ShopPlan.Asking(
                        owed.order().name(),
                        reading.persons().shown(owed.order().customer()),
                        owed.due(),
                        !owed.order().due().isEmpty(),
                        owed.parts()))
                .toList();
        Map<String, SortedMap<String, BigDecimal>> behind = reading.dayNeeds().behindAll();
        return plan.telling(orders, key -> behind.getOrDefault(key, Collections.emptySortedMap()));
    }

    /** 'PO-1001, by Kim Aster on 2026-11-30 at 08:00 UTC', of each that there was not yet. */
    static List<String> placedSince(Reading reading, int known) {
        List<String> says = new ArrayList<>();
        for (int number = PurchaseDesk.FIRST + known;
                number < PurchaseDesk.FIRST + reading.stock().purchaseCount();
                number++) {
            String name = "PO-" + number;
            reading.journal().of(new Subject(PurchaseHappening.WHAT, name)).stream()
                    .findFirst()
                    .ifPresent(entry -> says.add(name + ", by "
                            + reading.persons().shown(entry.stamp().person()) + " on "
                            + Entry.written(entry.stamp().at()).substring(0, 16).replace("T", " at ") + " UTC"));
        }
        return says;
    }

    /** What is still to be made, by part; and by part in its finish what is still to be coated. */
    public static SortedMap<String, BigDecimal> toMake(ShopPlan plan) {
        SortedMap<String, BigDecimal> left = new TreeMap<>();
        plan.toMake().forEach(receipt -> left.merge(receipt.item().part().text(), receipt.quantity(), BigDecimal::add));
        Stream.concat(plan.toMake().stream(), plan.toCoat().stream())
                .filter(receipt -> !receipt.item().finish().isEmpty())
                .forEach(receipt -> left.merge(
                        Stock.key(receipt.item().part().text(), receipt.item().finish()),
                        receipt.quantity(),
                        BigDecimal::add));
        return left;
    }

    /** What it would cost to buy for each order by itself. */
    public static BigDecimal apart(Reading reading, ShopPlan plan) {
        return plan.apart(reading.needs().owed().stream()
                .map(owed -> reading.needs().whole(owed).stream()
                        .map(need -> new Demand(
                                PurchaseDesk.item(need.part(), need.finish()),
                                Math.toIntExact(need.day().toEpochDay()),
                                need.quantity(),
                                need.order()))
                        .toList())
                .toList());
    }

    /** Whether the plan may be another one after entries of these kinds. */
    public static boolean isTouchedBy(Set<String> kinds) {
        return kinds.stream().anyMatch(kind -> !LEAVES_IT.contains(kind) && !kind.startsWith(PersonHappening.KIND));
    }

    /** What the item is made of, as it stands in the kit that asks for it last; one that is in no kit is as it is today. */
    private void describe(DayNeeds.Asker asker) {
        StockItem item = PurchaseDesk.item(asker.part(), asker.finish());
        if (!madeOf.containsKey(item) && !asker.kit().isEmpty()) {
            roots(reading.orders().lines(asker.kit())).forEach(root -> take(root, asker.order()));
        }
        leftTheCatalogue(item, asker.order());
    }

    private void leftTheCatalogue(StockItem item, String order) {
        if (!today.parts().containsKey(item.part())) {
            gone.putIfAbsent(item.part(), order);
        }
    }

    /** An item of a kit with what is inside it. */
    private record Node(KitLine line, List<Node> inside) {

        private boolean isBought() {
            return line.source().equals("buy");
        }

        private Set<String> finishes() {
            return inside.stream()
                    .map(Node::finishes)
                    .flatMap(Set::stream)
                    .collect(Collectors.toCollection(
                            () -> new TreeSet<>(line.finish().isEmpty() ? Set.of() : Set.of(line.finish()))));
        }

        /** Its own finish, or those of what it is put together of: they lie in stock as different things. */
        private StockItem item() {
            String finish = !line.finish().isEmpty() || isBought() ? line.finish() : String.join("+", finishes());
            return PurchaseDesk.item(line.part(), finish);
        }
    }

    private static List<Node> roots(List<KitLine> lines) {
        Node all = new Node(lines.get(0), new ArrayList<>());
        List<Node> open = new ArrayList<>(List.of(all));
        for (KitLine line : lines) {
            open.subList(Math.min(line.level(), open.size()), open.size()).clear();
            Node node = new Node(line, new ArrayList<>());
            open.get(open.size() - 1).inside().add(node);
            open.add(node);
        }
        return all.inside();
    }

    /** What is put together only in the kit is asked for in its parts. */
    private void take(Node node, String order) {
        if (node.line().picked() || node.isBought()) {
            describe(node, order);
        } else {
            node.inside().forEach(child -> take(child, order));
        }
    }

    private StockItem describe(Node node, String order) {
        StockItem whole = node.item();
        if (madeOf.containsKey(whole)) {
            return whole;
        }
        leftTheCatalogue(whole, order);
        StockItem bare = node.line().finish().isEmpty() ? whole : StockItem.bare(whole.part());
        if (!bare.equals(whole)) {
            madeOf.put(whole, List.of(new Component(bare, BigDecimal.ONE)));
        }
        madeOf.put(bare, List.of());
        if (!node.isBought()) {
            madeOf.put(
                    bare,
                    node.inside().stream()
                            .map(child -> component(node, child, order))
                            .toList());
        }
        return whole;
    }

    private Component component(Node node, Node child, String order) {
        return new Component(
                describe(child, order),
                child.line().quantity().divide(node.line().quantity(), MathContext.DECIMAL128));
    }
}
