package boltlore.book.orders;

import boltlore.answers.OrderKit;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.measure.PartNumber;
import boltlore.order.Order;
import boltlore.order.json.OrderReader;
import boltlore.resolution.OrderResolver;
import boltlore.resolution.rules.RuleResolver;
import boltlore.trades.KitInWork;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteRequest;
import boltlore.trades.orders.KitTrades;
import boltlore.trades.orders.Trades;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * A catalogue ready for work on orders of the book.
 *
 * @param folder that it was read from
 */
public record Bench(Catalogue catalogue, OrderResolver resolver, Path folder) {

    public static Bench of(Catalogue catalogue, Path folder) {
        return new Bench(
                catalogue,
                new OrderResolver(new RuleResolver(catalogue), Trades.kinds().toList()),
                folder);
    }

    /** A kit that nothing stops, with what it costs. */
    record Resolved(KitInWork kit, OrderPricing pricing, List<KeptFinding> found) {}

    /** What the part is called; empty where the catalogue does not know it any more. */
    public String named(String part) {
        Part known = catalogue.parts().get(new PartNumber(part));
        return known == null ? "" : known.name().english();
    }

    /** An order as the book keeps it, which names persons by their keys. */
    public Outcome<Order> order(String name, byte[] content) {
        return OrderReader.parse("order " + name, content, catalogue);
    }

    /** The kit of an order and its price; faulty with all that stops it. */
    Outcome<Resolved> resolve(Order order, QuoteRequest asked) {
        return found(order).then(found -> {
            KitInWork kit = kit(found, asked.on());
            OrderPricing pricing = OrderPricing.of(kit.bill(), catalogue, asked);
            return pricing.calculation()
                    .then(price -> Outcome.sound(
                            new Resolved(kit, pricing, KeptFinding.of(KitTrades.of(kit, found.misfits())))));
        });
    }

    /** The kit of an order; faulty with all that stops it. */
    Outcome<KitInWork> kit(Order order, LocalDate today) {
        return found(order).then(found -> Outcome.sound(kit(found, today)));
    }

    private KitInWork kit(OrderKit found, LocalDate today) {
        return new KitInWork(
                        resolver.resolver().plan(found.order().family()), Objects.requireNonNull(found.bill()), today)
                .beside(OrderKit.beside(resolver, found.order()));
    }

    private Outcome<OrderKit> found(Order order) {
        return OrderKit.of(resolver, order, false)
                .then(found -> found.issuesSheets()
                        ? Outcome.sound(found)
                        : stopped(
                                order,
                                KitTrades.byRules(found.resolution(), found.misfits(), order)
                                        .findings()
                                        .all()));
    }

    private static Outcome<OrderKit> stopped(Order order, List<Finding> findings) {
        List<String> said =
                findings.stream().filter(Finding::stops).map(Finding::says).toList();
        List<String> all = said.isEmpty() ? List.of("choices that make no kit yet") : said;
        return Outcome.faulty(all.stream()
                .map(says -> Fault.of(
                        "order " + order.name(),
                        says,
                        "an order that makes a kit",
                        "'boltlore choose' says what is open, and what would have to change."))
                .toList());
    }
}
