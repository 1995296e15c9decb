package boltlore.cli;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Outcome;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.picking.PickingList;
import boltlore.trades.shipping.Consignment;
import boltlore.trades.shipping.SellingPrice;
import boltlore.trades.shipping.ShipFindings;
import boltlore.trades.shipping.Shipment;
import boltlore.trades.shipping.Shipper;
import java.nio.file.Path;
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
final class ShipCommand extends OldTradeCommand<ShippedOrder> {

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
    Path out() {
        return out;
    }

    /** What is no country is refused before anything is read. */
    @Override
    int run(Screen screen) {
        route.route();
        return super.run(screen);
    }

    @Override
    Outcome<List<ShippedOrder>> worked(KitsTogether kits) {
        List<Outcome<Shipment>> shipments =
                kits.bills().stream().map(bill -> shipment(kits, bill)).toList();
        return Outcome.all(shipments).then(all -> Outcome.sound(together(kits.catalogue(), all)));
    }

    private Outcome<Shipment> shipment(KitsTogether kits, Bill bill) {
        FamilyPlan plan = kits.plan(bill);
        OrderPricing pricing = OrderPricing.of(bill, kits.catalogue(), quote.of(bill.order()));
        SellingPrice price = SellingPrice.of(pricing).orElse(null);
        return price == null && kits.catalogue().prices() != null
                ? Outcome.faulty(pricing.calculation().faults())
                : Outcome.sound(Shipper.of(pricing.priced(), price, PickingList.of(plan, bill), route.route()));
    }

    private static List<ShippedOrder> together(Catalogue catalogue, List<Shipment> all) {
        Consignment together = new Consignment(all);
        return all.stream()
                .map(shipment -> new ShippedOrder(catalogue, shipment, together))
                .toList();
    }

    @Override
    String none() {
        return "No order of these can be shipped.";
    }

    @Override
    String json(List<ShippedOrder> shipped, List<Path> written) {
        return ShipAnswer.json(shipped, written);
    }

    @Override
    void print(Screen screen, List<ShippedOrder> shipped) {
        shipped.forEach(each -> ShipText.print(screen, each.shipment(), each.together()));
        screen.line(ShipText.written(shipped.size(), out));
    }

    @Override
    boolean stops(List<ShippedOrder> shipped) {
        return shipped.stream().anyMatch(each -> ShipFindings.stop(each.shipment(), each.together()));
    }
}
