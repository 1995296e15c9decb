package boltlore.trades.buying;

import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.measure.Digits;
import boltlore.measure.Money;
import boltlore.netting.PlannedReceipt;
import boltlore.trades.KitInWork;
import boltlore.trades.Room;
import boltlore.trades.StoppedOrder;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.TradeResult.Sheet;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The needs of many orders together: one purchase list a supplier, what is made and coated, by when. */
public final class BuyingTrade extends Trade {

    private static final TradeOption<LocalDate> ON =
            TradeOption.date("--on", "The day from which on is planned (2026-06-01); without it today.");

    public BuyingTrade() {
        super(
                "buy",
                Room.STORES,
                "Write one purchase list for all these orders, by supplier, with packs, price breaks and order-by dates, and"
                        + " what is to make and to coat by when.",
                "Nothing is to buy for these orders.",
                List.of(BuyingFinding.values()),
                List.of(ON));
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return work(kits, List.of(), options);
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, List<StoppedOrder> stopped, Given options) {
        LocalDate today = options.get(ON).orElse(kits.get(0).today());
        Findings left = stopped.stream().map(StoppedOrder::finding).collect(Findings.collected());
        ShopPlan plan = ShopPlan.of(kits, StoresNow.empty(today));
        BigDecimal apart = plan.apart(
                kits.stream().map(kit -> OrderNeeds.of(kit, today).needs()).toList());
        return Outcome.sound(List.of(work(plan, apart, left)));
    }

    /**
     * What is found in a plan, and its sheet.
     *
     * @param apart what it would cost to buy for each order by itself
     */
    public static TradeResult work(ShopPlan plan, BigDecimal apart, Findings more) {
        Findings findings = findings(plan).and(more);
        return new TradeResult("", findings, List.of(Sheet.of(() -> BuyingReport.compose(plan, apart, findings))));
    }

    private static Findings findings(ShopPlan plan) {
        return Stream.of(tooLate(plan), withoutDay(plan), sooner(plan), tooSmall(plan), fromNobody(plan))
                .flatMap(each -> each)
                .collect(Findings.collected());
    }

    /** Of each order, the item whose release is farthest past due. */
    private static Stream<Finding> tooLate(ShopPlan plan) {
        SortedMap<String, List<PlannedReceipt>> late = new TreeMap<>();
        plan.netting().planned().stream()
                .filter(receipt -> receipt.lateBy(plan.netting().now()) > 0)
                .forEach(receipt -> plan.askedBy(receipt)
                        .outside()
                        .keySet()
                        .forEach(order -> late.computeIfAbsent(order, any -> new ArrayList<>())
                                .add(receipt)));
        return plan.orders().stream()
                .filter(order -> late.containsKey(order.order()))
                .map(order -> tooLate(
                        order,
                        late.getOrDefault(order.order(), List.of()),
                        plan.netting().now()));
    }

    private static Finding tooLate(ShopPlan.Asking order, List<PlannedReceipt> late, int now) {
        PlannedReceipt worst = late.stream()
                .max(Comparator.comparingInt((PlannedReceipt receipt) -> receipt.lateBy(now)))
                .orElseThrow();
        String name = order.order();
        return Finding.of(
                BuyingFinding.ORDERED_TOO_LATE,
                name,
                "order",
                name,
                "due",
                order.due(),
                "items",
                (int) late.stream().map(PlannedReceipt::item).distinct().count(),
                "part",
                worst.item().toString(),
                "days",
                worst.lateBy(now));
    }

    private static Stream<Finding> withoutDay(ShopPlan plan) {
        return plan.orders().stream()
                .filter(order -> !order.agreed())
                .map(order -> Finding.of(
                        BuyingFinding.NO_DAY_DUE, order.order(), "order", order.order(), "day", order.due()));
    }

    private static Stream<Finding> sooner(ShopPlan plan) {
        return plan.toHurry().stream()
                .flatMap(item -> item.brought().stream()
                        .map(brought -> Finding.of(
                                BuyingFinding.NEEDED_SOONER,
                                brought.receipt().name() + " " + item.item(),
                                "receipt",
                                brought.receipt().name(),
                                "part",
                                item.item().toString(),
                                "quantity",
                                Digits.plain(brought.quantity()),
                                "expected",
                                StoresNow.date(brought.receipt().period()),
                                "needed",
                                StoresNow.date(brought.wanted()))));
    }

    private static Stream<Finding> tooSmall(ShopPlan plan) {
        SortedMap<String, BigDecimal> sums = new TreeMap<>();
        plan.purchases().forEach(line -> sums.merge(line.supplier(), line.homeCost(), BigDecimal::add));
        return plan.catalogue().stores().leastOrders().entrySet().stream()
                .filter(least -> sums.containsKey(least.getKey())
                        && sums.getOrDefault(least.getKey(), BigDecimal.ZERO).compareTo(least.getValue()) < 0)
                .map(least -> Finding.of(
                        BuyingFinding.BELOW_LEAST_ORDER,
                        least.getKey(),
                        "supplier",
                        least.getKey(),
                        "cost",
                        money(sums.getOrDefault(least.getKey(), BigDecimal.ZERO), plan),
                        "least",
                        money(least.getValue(), plan)));
    }

    private static String money(BigDecimal amount, ShopPlan plan) {
        return Money.says(amount, plan.catalogue().workshop().currency());
    }

    private static Stream<Finding> fromNobody(ShopPlan plan) {
        return plan.purchases().stream()
                .filter(line -> line.supplier().isEmpty())
                .map(PurchaseLine::part)
                .distinct()
                .map(part -> Finding.of(
                        BuyingFinding.NO_SUPPLIER,
                        part.number().text(),
                        "part",
                        part.number().text(),
                        "name",
                        part.name()));
    }
}
