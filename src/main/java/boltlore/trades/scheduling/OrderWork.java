package boltlore.trades.scheduling;

import boltlore.catalogue.Capacity;
import boltlore.catalogue.Capacity.WorkCentre;
import boltlore.catalogue.Part;
import boltlore.order.Order;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.costing.path.Step;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteOptions;
import boltlore.trades.scheduling.finite.Shop;
import boltlore.trades.scheduling.finite.ShopOrder;
import boltlore.trades.scheduling.finite.Windows;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The work of one order. Its steps with their days are those that set the lead time in the price; to them comes the work that
 * they take at the work centres. A part that stands in several places of the kit is made once, for the first of them; each
 * operation is rounded up to a whole minute. The pieces that the own oven takes are hung as they would be if the order were
 * coated alone; the wait for a round is among the days.
 *
 * @param steps beside those of the order, in the same places
 * @param unplaced work whose time is not known to pass, so that no date is promised
 */
record OrderWork(KitInWork kit, OrderPricing pricing, ShopOrder shopOrder, List<Done> steps, Set<Unplaced> unplaced) {

    /**
     * What is done in a step.
     *
     * @param run number of the powder run, or 0 where the step is none
     */
    record Done(Step.What what, @Nullable Part part, String finish, int run, List<String> operations) {}

    /**
     * An operation that no work centre with hours takes.
     *
     * @param centre that takes it, without hours; null where none does
     */
    record Unplaced(String operation, @Nullable WorkCentre centre) {}

    static OrderWork of(KitInWork kit, LocalDate on, Shop shop, Capacity capacity) {
        OrderPricing pricing = QuoteOptions.pricing(kit, Given.NONE);
        StepNetwork network = new StepNetwork(kit, pricing, shop, capacity);
        network.add(pricing.path());
        RunSteps.add(network, kit);
        int begun = shop.day(begins(kit.order(), on));
        int ordered =
                kit.order().placed() == null ? begun : shop.day(kit.order().placed());
        LocalDate due = kit.order().due();
        ShopOrder dated = new ShopOrder(
                kit.order().name(), due == null ? begun : shop.day(due), due != null, network.steps(ordered, begun));
        ShopOrder ranked = due == null ? dated.due(Windows.of(dated, shop).earliest(), false) : dated;
        return new OrderWork(kit, pricing, ranked, network.done(), network.unplaced());
    }

    Order order() {
        return kit.order();
    }

    /** Whether nobody has written down how long the kit as a whole takes, which stands with the prices. */
    boolean lacksKitWork() {
        return kit.catalogue().prices() == null;
    }

    /** Whether all its work is in the plan, so that a date can be promised. */
    boolean whole() {
        return unplaced.isEmpty() && !lacksKitWork();
    }

    /** The day that the price's lead time gives: everything ordered and begun on the later of order and plan. */
    LocalDate priced(LocalDate on) {
        return begins(order(), on).plusDays(pricing.leadDays());
    }

    private static LocalDate begins(Order order, LocalDate on) {
        LocalDate placed = order.placed();
        return placed == null || placed.isBefore(on) ? on : placed;
    }
}
