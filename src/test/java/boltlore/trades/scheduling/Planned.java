package boltlore.trades.scheduling;

import boltlore.bill.Bill;
import boltlore.catalogue.Capacity;
import boltlore.catalogue.Capacity.OpenHours;
import boltlore.catalogue.Capacity.WorkCentre;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.HouseRules;
import boltlore.catalogue.PriceBook;
import boltlore.demo.Demo;
import boltlore.faults.Outcome;
import boltlore.order.OrderBuilder;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.KitInWork;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Orders of the demo in a workshop that can do what a test wants. */
final class Planned {

    /** Those that make a kit. */
    static final List<String> ORDERS = List.of(
            "bl-1001", "bl-1002", "bl-1003", "bl-1004", "bl-1005", "bl-1008", "bl-1010", "bl-1011", "bl-1012",
            "bl-1013", "bl-1014", "bl-2001", "bl-2002", "bl-2003");

    static final SchedulingTrade TRADE = new SchedulingTrade();

    private static final Map<String, Bill> BILLS = new HashMap<>();

    private Planned() {}

    static Capacity demo() {
        return Objects.requireNonNull(Demo.catalogue().capacity());
    }

    static Capacity withoutDaysOff() {
        return new Capacity(demo().centres(), List.of());
    }

    /** The demo's work centres with one of them changed; left out where nothing comes back. */
    static Capacity with(String centre, UnaryOperator<@Nullable WorkCentre> change) {
        List<WorkCentre> centres = new ArrayList<>();
        for (WorkCentre each : demo().centres()) {
            WorkCentre changed = each.name().equals(centre) ? change.apply(each) : each;
            if (changed != null) {
                centres.add(changed);
            }
        }
        return new Capacity(centres, demo().daysOff());
    }

    static UnaryOperator<@Nullable WorkCentre> open(@Nullable OpenHours open) {
        return centre -> new WorkCentre(
                Objects.requireNonNull(centre).name(), centre.says(), centre.operations(), centre.kitWork(), open);
    }

    static UnaryOperator<@Nullable WorkCentre> hours(String perDay) {
        return open(new OpenHours(1, 1, new BigDecimal(perDay), BigDecimal.valueOf(100)));
    }

    static KitInWork kit(String order, @Nullable Capacity capacity) {
        Bill bill = BILLS.computeIfAbsent(order, Demo::bill);
        return kit(bill, capacity);
    }

    private static KitInWork kit(Bill bill, @Nullable Capacity capacity) {
        return kit(bill, capacity, Demo.catalogue().prices());
    }

    static KitInWork withoutPrices(String order) {
        return kit(BILLS.computeIfAbsent(order, Demo::bill), demo(), null);
    }

    private static KitInWork kit(Bill bill, @Nullable Capacity capacity, @Nullable PriceBook prices) {
        Catalogue demo = Demo.catalogue();
        Catalogue other = new Catalogue(
                demo.workshop(),
                demo.finishes(),
                demo.materials(),
                demo.parts(),
                demo.families(),
                demo.revision(),
                prices,
                demo.shipping(),
                capacity,
                demo.stores(),
                HouseRules.NONE);
        return new KitInWork(
                new FamilyPlan(other, other.family(bill.order().family())), bill, LocalDate.of(2026, 3, 2));
    }

    /** The same order with other dates. */
    static KitInWork dated(String order, @Nullable LocalDate placed, @Nullable LocalDate due, Capacity capacity) {
        Bill bill = BILLS.computeIfAbsent(order, Demo::bill);
        return kit(
                new Bill(new OrderBuilder(bill.order()).placed(placed).due(due).build(), bill.resolved(), bill.items()),
                capacity);
    }

    static List<KitInWork> kits(List<String> orders, @Nullable Capacity capacity) {
        return orders.stream().map(order -> kit(order, capacity)).toList();
    }

    /** What was typed: '--on 2026-05-11 --rule shortest'. */
    static Outcome<Given> typed(String words) {
        Map<TradeOption<?>, List<String>> typed = new LinkedHashMap<>();
        List<String> all = words.isEmpty() ? List.of() : List.of(words.split(" "));
        for (int i = 0; i + 1 < all.size(); i += 2) {
            String name = all.get(i);
            TradeOption<?> option = TRADE.options().stream()
                    .filter(known -> known.name().equals(name))
                    .findFirst()
                    .orElseThrow();
            typed.computeIfAbsent(option, none -> new ArrayList<>()).add(all.get(i + 1));
        }
        return Given.read(typed);
    }

    static TradeResult planned(List<KitInWork> kits, String words) {
        return only(typed(words).then(given -> TRADE.work(kits, given)));
    }

    /** As it is done for 'kit'. */
    static TradeResult withKit(KitInWork kit) {
        Trade trade = TRADE;
        return only(trade.work(List.of(kit), trade.forKit()));
    }

    private static TradeResult only(Outcome<List<TradeResult>> outcome) {
        if (outcome instanceof Outcome.Sound<List<TradeResult>> sound) {
            return sound.value().get(0);
        }
        throw new AssertionError(outcome.faults().toString());
    }
}
