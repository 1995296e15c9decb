package boltlore.cli;

import boltlore.faults.Outcome;
import java.nio.file.Path;
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
final class PriceCommand extends OldTradeCommand<PricedOrder> {

    @Mixin
    private QuoteOption quote = new QuoteOption();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the orders' folders are written; without it 'exports/pricing' here.")
    private Path out = Path.of("exports", "pricing");

    @Override
    Path out() {
        return out;
    }

    @Override
    Outcome<List<PricedOrder>> worked(KitsTogether kits) {
        return Outcome.all(kits.bills().stream()
                .map(bill -> PricedOrder.of(kits.catalogue(), bill, quote.of(bill.order())))
                .toList());
    }

    @Override
    String none() {
        return "No order of these can be priced.";
    }

    @Override
    String json(List<PricedOrder> priced, List<Path> written) {
        return PriceAnswer.json(priced, written);
    }

    @Override
    void print(Screen screen, List<PricedOrder> priced) {
        priced.forEach(each -> PriceText.print(screen, each));
        screen.line(PriceText.written(priced.size(), out));
    }

    /** A quotation that makes a loss says so and is written all the same. */
    @Override
    boolean stops(List<PricedOrder> priced) {
        return false;
    }
}
