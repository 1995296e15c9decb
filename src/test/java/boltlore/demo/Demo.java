package boltlore.demo;

import boltlore.bill.Bill;
import boltlore.bill.BillMaker;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Outcome;
import boltlore.order.Order;
import boltlore.order.json.OrderReader;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.OrderResolver;
import boltlore.resolution.Resolution;
import boltlore.resolution.rules.RuleResolver;
import boltlore.trades.KitInWork;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** The demo catalogue, and the bills of its orders. */
public final class Demo {

    private static final Path FOLDER = Path.of("catalog");

    private static final Catalogue CATALOGUE = sound(CatalogueReader.read(FOLDER));
    private static final OrderResolver RESOLVER = new OrderResolver(new RuleResolver(CATALOGUE));

    private Demo() {}

    public static Catalogue catalogue() {
        return CATALOGUE;
    }

    /** The order in the file of that name, given without its ending: 'bl-1001'. */
    public static Order order(String name) {
        return sound(OrderReader.read(FOLDER.resolve("orders").resolve(name + ".json"), CATALOGUE));
    }

    /** The bill of an order whose choices make a kit. */
    public static Bill bill(String name) {
        Order order = order(name);
        Resolution resolution = sound(RESOLVER.resolve(order, List.of()));
        if (resolution instanceof Resolution.Resolved resolved) {
            return BillMaker.make(RESOLVER.resolver().plan(order.family()), order, resolved);
        }
        throw new AssertionError(name + " makes no kit: " + resolution.findings());
    }

    /** The kit of an order, for a trade to work on. */
    public static KitInWork kit(String name) {
        Bill bill = bill(name);
        return new KitInWork(RESOLVER.resolver().plan(bill.order().family()), bill, LocalDate.of(2026, 3, 2));
    }

    /** The same of another catalogue, with its orders. */
    public static KitInWork kit(Path folder, String name) {
        Catalogue catalogue = sound(CatalogueReader.read(folder));
        OrderResolver resolver = new OrderResolver(new RuleResolver(catalogue));
        Order order = sound(OrderReader.read(folder.resolve("orders").resolve(name + ".json"), catalogue));
        if (sound(resolver.resolve(order, List.of())) instanceof Resolution.Resolved resolved) {
            FamilyPlan plan = resolver.resolver().plan(order.family());
            return new KitInWork(plan, BillMaker.make(plan, order, resolved), LocalDate.of(2026, 3, 2));
        }
        throw new AssertionError(name + " makes no kit");
    }

    private static <T> T sound(Outcome<T> outcome) {
        if (outcome instanceof Outcome.Sound<T> sound) {
            return sound.value();
        }
        throw new AssertionError(outcome.faults().toString());
    }
}
