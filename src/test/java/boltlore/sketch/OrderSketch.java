package boltlore.sketch;

import static boltlore.sketch.CatalogueSketch.FAMILY;

import boltlore.bill.Bill;
import boltlore.bill.BillMaker;
import boltlore.catalogue.Catalogue;
import boltlore.choices.Choices;
import boltlore.faults.Outcome;
import boltlore.measure.OptionName;
import boltlore.measure.Party;
import boltlore.order.Extra;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.OrderAddresses;
import boltlore.order.OrderTerms;
import boltlore.order.Waiver;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.OrderResolver;
import boltlore.resolution.Resolution;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** An order in the making, and its bill by the real rules. */
public final class OrderSketch {

    private final Resolver resolver;
    private final Map<OptionName, String> chosen = new LinkedHashMap<>();
    private LeftOut leftOut = new LeftOut.Undecided();
    private List<Waiver> waived = List.of();
    private List<Extra> extra = List.of();

    private OrderAddresses addresses = OrderAddresses.NONE;
    private String name = "BL-1";

    public OrderSketch(Catalogue catalogue) {
        this.resolver = new RuleResolver(catalogue);
    }

    public OrderSketch choose(String option, String value) {
        chosen.put(new OptionName(option), value);
        return this;
    }

    public OrderSketch leftOut(LeftOut value) {
        leftOut = value;
        return this;
    }

    public OrderSketch waived(Waiver... all) {
        waived = List.of(all);
        return this;
    }

    public OrderSketch extra(Extra... all) {
        extra = List.of(all);
        return this;
    }

    public OrderSketch consignee(@Nullable Party party) {
        addresses = new OrderAddresses(party, null);
        return this;
    }

    public OrderSketch named(String value) {
        name = value;
        return this;
    }

    public FamilyPlan plan() {
        return resolver.plan(FAMILY);
    }

    public Order draw() {
        return new Order(
                name,
                FAMILY,
                "Customer",
                "",
                "en",
                null,
                LocalDate.of(2025, 3, 14),
                LocalDate.of(2025, 6, 30),
                Choices.of(resolver.catalogue().family(FAMILY), chosen),
                new TreeSet<>(),
                new TreeSet<>(),
                List.of(),
                leftOut,
                waived,
                extra,
                "",
                OrderTerms.NONE,
                Map.of(),
                "",
                addresses);
    }

    public Bill bill() {
        Order order = draw();
        Outcome<Resolution> outcome = new OrderResolver(resolver).resolve(order, List.of());
        if (outcome instanceof Outcome.Sound<Resolution> sound
                && sound.value() instanceof Resolution.Resolved resolved) {
            return BillMaker.make(plan(), order, resolved);
        }
        throw new AssertionError("The order does not resolve: " + outcome);
    }
}
