package boltlore.cli;

import boltlore.exports.Exports;
import boltlore.faults.Outcome;
import boltlore.weighing.Weighing;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What kits do to the weights of their donor vehicles. */
@Command(
        name = "weigh",
        description =
                "Work out axle loads before and after conversion, compare them with the limits, and write a weight"
                        + " statement for each order.")
final class WeighCommand extends RoomCommand {

    @Mixin
    private OrdersOption orders = new OrdersOption();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the orders' folders are written; without it 'exports/weighing' here.")
    private Path out = Path.of("exports", "weighing");

    @Override
    int run(Screen screen) {
        HeadStart.forSheets();
        return done(screen, orders.kits().then(kits -> Outcome.sound(weigh(screen, kits))));
    }

    /** Orders that something stops are told and not weighed. */
    private int weigh(Screen screen, KitsTogether kits) {
        if (!json()) {
            kits.stopped().forEach(kit -> KitText.print(screen, kit));
        }
        List<WeighedOrder> weighed = kits.bills().stream()
                .map(bill -> WeighedOrder.of(kits.catalogue(), bill))
                .toList();
        if (weighed.isEmpty()) {
            screen.line(json() ? "{}" : "No order of these can be weighed.");
            return Exit.STOPPED;
        }
        return issue(screen, weighed, kits.stopped().isEmpty());
    }

    private int issue(Screen screen, List<WeighedOrder> weighed, boolean all) {
        EachWritten written = EachWritten.of(weighed, each -> Exports.write(out.resolve(each.name()), each.files()));
        return written.faults().isEmpty()
                ? told(screen, weighed, written.paths(), all)
                : refused(written.faults(), Exit.NOT_WRITTEN);
    }

    private int told(Screen screen, List<WeighedOrder> weighed, List<Path> written, boolean all) {
        if (json()) {
            screen.line(WeighAnswer.json(weighed, written));
        } else {
            weighed.forEach(each -> WeighText.print(screen, each));
            screen.line(WeighText.written(weighed.size(), out));
        }
        boolean stops = weighed.stream().map(WeighedOrder::weighing).anyMatch(Weighing::stops);
        return all && !stops ? Exit.OK : Exit.STOPPED;
    }
}
