package boltlore.cli;

import boltlore.exports.Exports;
import boltlore.faults.Outcome;
import boltlore.fixings.KitFixings;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is bolted to what, with torques, spares and counts by weight. */
@Command(
        name = "fixings",
        description =
                "List bolts, nuts and washers by joint and by bag with their torques, look at each joint, and write a"
                        + " fixings sheet for each order.")
final class FixingsCommand extends RoomCommand {

    @Mixin
    private OrdersOption orders = new OrdersOption();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the orders' folders are written; without it 'exports/fixings' here.")
    private Path out = Path.of("exports", "fixings");

    @Override
    int run(Screen screen) {
        HeadStart.forSheets();
        return done(screen, orders.kits().then(kits -> Outcome.sound(list(screen, kits))));
    }

    /** Orders that something stops are told and not listed. */
    private int list(Screen screen, KitsTogether kits) {
        if (!json()) {
            kits.stopped().forEach(kit -> KitText.print(screen, kit));
        }
        List<FixedOrder> listed = kits.bills().stream()
                .map(bill -> FixedOrder.of(kits.catalogue(), bill))
                .toList();
        if (listed.isEmpty()) {
            screen.line(json() ? "{}" : "No order of these has fixings to list.");
            return Exit.STOPPED;
        }
        return issue(screen, listed, kits.stopped().isEmpty());
    }

    private int issue(Screen screen, List<FixedOrder> listed, boolean all) {
        EachWritten written = EachWritten.of(listed, each -> Exports.write(out.resolve(each.name()), each.files()));
        return written.faults().isEmpty()
                ? told(screen, listed, written.paths(), all)
                : refused(written.faults(), Exit.NOT_WRITTEN);
    }

    private int told(Screen screen, List<FixedOrder> listed, List<Path> written, boolean all) {
        if (json()) {
            screen.line(FixingsAnswer.json(listed, written));
        } else {
            listed.forEach(each -> FixingsText.print(screen, each.fixings()));
            screen.line(
                    (listed.size() == 1 ? "Fixings sheet" : listed.size() + " fixings sheets") + " written to " + out);
        }
        boolean stops = listed.stream().map(FixedOrder::fixings).anyMatch(KitFixings::stops);
        return all && !stops ? Exit.OK : Exit.STOPPED;
    }
}
