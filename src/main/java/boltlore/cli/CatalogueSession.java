package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.catalogue.BuildDate;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.order.Order;
import boltlore.order.json.OrderReader;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.OrderResolver;
import boltlore.resolution.rules.RuleResolver;
import boltlore.trades.orders.Trades;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/** A catalogue laid out ready for work on orders. */
record CatalogueSession(Catalogue catalogue, OrderResolver resolver) {

    static Outcome<CatalogueSession> of(CatalogueOption option) {
        return option.read().then(catalogue -> Outcome.sound(of(catalogue)));
    }

    static CatalogueSession of(Catalogue catalogue) {
        return new CatalogueSession(
                catalogue,
                new OrderResolver(new RuleResolver(catalogue), Trades.kinds().toList()));
    }

    FamilyPlan plan(String family) {
        return resolver.resolver().plan(family);
    }

    /** An order file; no vehicle was built after today. */
    Outcome<Order> order(Path file) {
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        return OrderReader.read(file, catalogue).then(order -> {
            BuildDate built = order.donorBuilt();
            return built == null || !built.isAfter(today)
                    ? Outcome.sound(order)
                    : Outcome.faulty(new Fault(
                            file.toString(),
                            0,
                            "/donorBuilt",
                            "built " + built,
                            "a day not after today, " + today,
                            "Look at the base vehicle's papers."));
        });
    }

    /** Reads and resolves one order; faults name its file. */
    Outcome<OrderKit> kit(Path file, boolean takeUsual) {
        return kit(file, order(file), takeUsual);
    }

    /** Resolves an order that was read from the file. */
    Outcome<OrderKit> kit(Path file, Outcome<Order> read, boolean takeUsual) {
        Outcome<OrderKit> outcome = read.then(order -> OrderKit.of(resolver, order, takeUsual));
        return outcome instanceof Outcome.Faulty<OrderKit> faulty
                ? Outcome.faulty(inFile(file, faulty.faults()))
                : outcome;
    }

    private static List<Fault> inFile(Path file, List<Fault> faults) {
        List<Fault> named = new ArrayList<>();
        for (Fault fault : faults) {
            named.add(
                    fault.file().isEmpty()
                            ? new Fault(
                                    file.toString(),
                                    fault.line(),
                                    fault.place(),
                                    fault.found(),
                                    fault.expected(),
                                    fault.advice())
                            : fault);
        }
        return named;
    }
}
