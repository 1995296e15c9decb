package boltlore.cli;

import boltlore.catalogue.PriceBook;
import boltlore.exports.Exports;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What kits cost in full, and what their customers are quoted. */
@Command(
        name = "price",
        description =
                "Work out what kits cost in full and how long they take, and write for each order a cost statement for"
                        + " the workshop and a quotation for the customer.")
final class PriceCommand extends RoomCommand {

    @Mixin
    private OrdersOption orders = new OrdersOption();

    @Mixin
    private QuoteOption quote = new QuoteOption();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the orders' folders are written; without it 'exports/pricing' here.")
    private Path out = Path.of("exports", "pricing");

    @Override
    int run(Screen screen) {
        HeadStart.forSheets();
        return done(
                screen,
                orders.kits().then(kits -> price(kits).then(priced -> Outcome.sound(tell(screen, kits, priced)))));
    }

    private Outcome<List<PricedOrder>> price(KitsTogether kits) {
        PriceBook prices = kits.catalogue().prices();
        if (prices == null) {
            return Outcome.faulty(Fault.of(
                    "workshop/pricing.json",
                    "nothing of that name",
                    "what labour, overhead and delivery cost, and how a price is made of it",
                    "Add it; catalog/README.md says how."));
        }
        List<PricedOrder> priced = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        kits.bills().forEach(bill -> {
            Outcome<PricedOrder> one = PricedOrder.of(kits.catalogue(), prices, bill, quote.of(bill.order()));
            faults.addAll(one.faults());
            if (one instanceof Outcome.Sound<PricedOrder> sound) {
                priced.add(sound.value());
            }
        });
        return faults.isEmpty() ? Outcome.sound(priced) : Outcome.faulty(faults);
    }

    /** Orders that something stops are told and not priced. */
    private int tell(Screen screen, KitsTogether kits, List<PricedOrder> priced) {
        if (!json()) {
            kits.stopped().forEach(kit -> KitText.print(screen, kit));
        }
        if (priced.isEmpty()) {
            screen.line(json() ? "{}" : "No order of these can be priced.");
            return Exit.STOPPED;
        }
        return issue(screen, priced, kits.stopped().isEmpty());
    }

    private int issue(Screen screen, List<PricedOrder> priced, boolean all) {
        EachWritten written = EachWritten.of(priced, each -> Exports.write(out.resolve(each.name()), each.files()));
        return written.faults().isEmpty()
                ? told(screen, priced, written.paths(), all)
                : refused(written.faults(), Exit.NOT_WRITTEN);
    }

    private int told(Screen screen, List<PricedOrder> priced, List<Path> written, boolean all) {
        if (json()) {
            screen.line(PriceAnswer.json(priced, written));
        } else {
            priced.forEach(each -> PriceText.print(screen, each));
            screen.line(PriceText.written(priced.size(), out));
        }
        return all ? Exit.OK : Exit.STOPPED;
    }
}
