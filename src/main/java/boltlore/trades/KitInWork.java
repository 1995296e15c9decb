package boltlore.trades;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Workshop;
import boltlore.choices.Choices;
import boltlore.order.Order;
import boltlore.resolution.FamilyPlan;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/** The kit of one order that nothing stops, and what the trades have worked out of it, each once. */
public final class KitInWork {

    private final FamilyPlan plan;
    private final Bill bill;
    private final LocalDate today;
    private final Map<Class<?>, Object> made = new HashMap<>();

    /** @param today stands in where an order has no date */
    public KitInWork(FamilyPlan plan, Bill bill, LocalDate today) {
        this.plan = plan.measured(bill.order());
        this.bill = bill;
        this.today = today;
    }

    /** What one trade makes of the kit and another one needs as well. */
    public synchronized <T> T once(Class<T> what, Function<KitInWork, T> make) {
        Object known = made.get(what);
        if (known == null) {
            known = make.apply(this);
            made.put(what, known);
        }
        return what.cast(known);
    }

    public FamilyPlan plan() {
        return plan;
    }

    public Bill bill() {
        return bill;
    }

    public Order order() {
        return bill.order();
    }

    public Choices choices() {
        return bill.resolved().choices();
    }

    public Family family() {
        return plan.family();
    }

    public Catalogue catalogue() {
        return plan.catalogue();
    }

    public Workshop workshop() {
        return catalogue().workshop();
    }

    public LocalDate today() {
        return today;
    }

    /** The day that the order was placed, or else today. */
    public LocalDate day() {
        LocalDate placed = order().placed();
        return placed == null ? today : placed;
    }
}
