package boltlore.cli;

import boltlore.bill.Bill;
import boltlore.exports.Exports;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Resolver;
import boltlore.shipping.Consignment;
import boltlore.shipping.Route;
import boltlore.shipping.ShipFindings;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Orders in their crates, with drafts of the papers that they travel with. */
@Command(
        name = "ship",
        description =
                "Pack orders into crates by fit stage and draft their shipping papers: packing list, customs lines,"
                        + " dangerous goods and labels. Orders given together travel in one vehicle.")
final class ShipCommand extends RoomCommand {

    @Mixin
    private OrdersOption orders = new OrdersOption();

    @Mixin
    private ShipRoute route = new ShipRoute();

    @Mixin
    private QuoteOption quote = new QuoteOption();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the orders' folders are written; without it 'exports/shipping' here.")
    private Path out = Path.of("exports", "shipping");

    @Override
    int run(Screen screen) {
        Route way = route.route();
        HeadStart.forSheets();
        return done(
                screen,
                orders.kits().then(kits -> shipped(kits, way).then(all -> Outcome.sound(ship(screen, kits, all)))));
    }

    private Outcome<List<ShippedOrder>> shipped(KitsTogether kits, Route way) {
        Resolver resolver = new Resolver(kits.catalogue());
        List<ShippedOrder> shipped = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (Bill bill : kits.bills()) {
            FamilyPlan plan = resolver.plan(bill.order().family());
            Outcome<ShippedOrder> one = ShippedOrder.of(plan, bill, way, quote.of(bill.order()));
            faults.addAll(one.faults());
            if (one instanceof Outcome.Sound<ShippedOrder> sound) {
                shipped.add(sound.value());
            }
        }
        return faults.isEmpty() ? Outcome.sound(shipped) : Outcome.faulty(faults);
    }

    /** Orders that something stops are told and not packed. */
    private int ship(Screen screen, KitsTogether kits, List<ShippedOrder> shipped) {
        if (!json()) {
            kits.stopped().forEach(kit -> KitText.print(screen, kit));
        }
        if (shipped.isEmpty()) {
            screen.line(json() ? "{}" : "No order of these can be shipped.");
            return Exit.STOPPED;
        }
        return issue(screen, shipped, kits.stopped().isEmpty());
    }

    private int issue(Screen screen, List<ShippedOrder> shipped, boolean all) {
        Consignment together =
                new Consignment(shipped.stream().map(ShippedOrder::shipment).toList());
        EachWritten written =
                EachWritten.of(shipped, each -> Exports.write(out.resolve(each.name()), each.files(together)));
        return written.faults().isEmpty()
                ? told(screen, shipped, together, written.paths(), all)
                : refused(written.faults(), Exit.NOT_WRITTEN);
    }

    private int told(Screen screen, List<ShippedOrder> shipped, Consignment together, List<Path> written, boolean all) {
        if (json()) {
            screen.line(ShipAnswer.json(shipped, together, written));
        } else {
            shipped.forEach(each -> ShipText.print(screen, each.shipment(), together));
            screen.line(ShipText.written(shipped.size(), out));
        }
        boolean stops = shipped.stream().anyMatch(each -> ShipFindings.stop(each.shipment(), together));
        return all && !stops ? Exit.OK : Exit.STOPPED;
    }
}
