package boltlore.cli;

import boltlore.faults.Outcome;
import boltlore.trades.fixings.KitFixings;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What is bolted to what, with torques, spares and counts by weight. */
@Command(
        name = "fixings",
        description =
                "List bolts, nuts and washers by joint and by bag with their torques, look at each joint, and write a"
                        + " fixings sheet for each order.")
final class FixingsCommand extends OldTradeCommand<FixedOrder> {

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the orders' folders are written; without it 'exports/fixings' here.")
    private Path out = Path.of("exports", "fixings");

    @Override
    Path out() {
        return out;
    }

    @Override
    Outcome<List<FixedOrder>> worked(KitsTogether kits) {
        return Outcome.sound(kits.bills().stream()
                .map(bill -> FixedOrder.of(kits.plan(bill), bill))
                .toList());
    }

    @Override
    String none() {
        return "No order of these has fixings to list.";
    }

    @Override
    String json(List<FixedOrder> listed, List<Path> written) {
        return FixingsAnswer.json(listed, written);
    }

    @Override
    void print(Screen screen, List<FixedOrder> listed) {
        listed.forEach(each -> FixingsText.print(screen, each.fixings()));
        screen.line((listed.size() == 1 ? "Fixings sheet" : listed.size() + " fixings sheets") + " written to " + out);
    }

    @Override
    boolean stops(List<FixedOrder> listed) {
        return listed.stream().map(FixedOrder::fixings).anyMatch(KitFixings::stops);
    }
}
