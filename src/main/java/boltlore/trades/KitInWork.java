package boltlore.trades;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Workshop;
import boltlore.choices.Choices;
import boltlore.findings.Findings;
import boltlore.measure.Wording;
import boltlore.order.Order;
import boltlore.report.Words;
import boltlore.resolution.FamilyPlan;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The kit of one order that nothing stops, and what the trades have worked out of it, each once. */
public final class KitInWork {

    private final FamilyPlan plan;
    private final Bill bill;
    private final LocalDate today;
    private final Map<Class<?>, Object> made = new HashMap<>();
    private Function<Choices, Optional<Bill>> others = choices -> Optional.empty();
    private int version = 1;

    /** @param today stands in where an order has no date */
    public KitInWork(FamilyPlan plan, Bill bill, LocalDate today) {
        this.plan = plan.measured(bill.order());
        this.bill = bill;
        this.today = today;
    }

    /**
     * Tells how other choices would come out.
     *
     * @param kits the kit of the same order under other choices, as far as they make one that ships
     */
    public KitInWork beside(Function<Choices, Optional<Bill>> kits) {
        others = kits;
        return this;
    }

    /**
     * Tells which version of its quotation the kit is that of.
     *
     * @param number from 1
     */
    public KitInWork version(int number) {
        version = number;
        return this;
    }

    /** Which version of its quotation this is, from 1. */
    public int version() {
        return version;
    }

    /** The kit of the same order under other choices; empty where they make none that ships, or nobody can say. */
    public Optional<Bill> otherwise(Choices choices) {
        return others.apply(choices);
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

    /** As the order waives and the family accepts them, which every sheet says as the kit does. */
    public Findings answered(Findings findings) {
        return FoundBy.of("", findings, order()).findings();
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

    /** A name of the catalogue as the workshop's own sheets say it. */
    public String says(Wording name) {
        return name.in(workshop().language());
    }

    /** The words of the workshop's own sheets, which stand beside these classes. */
    public Words words(Class<?>... beside) {
        return Words.of(workshop().language(), beside);
    }

    /** The day of this run. */
    public LocalDate today() {
        return today;
    }

    /** The day that the order was placed, or else today. */
    public LocalDate day() {
        LocalDate placed = order().placed();
        return placed == null ? today : placed;
    }
}
