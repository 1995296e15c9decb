package boltlore.cli;

import boltlore.charging.Charging;
import boltlore.exports.Exports;
import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What power passes, what limits it, and whether the high-voltage system keeps its limits. */
@Command(
        name = "charge",
        description = "Work out charging power and time, export, precharge, isolation, fuses and cables, and write a"
                + " charging and high-voltage sheet for each order.")
final class ChargeCommand extends RoomCommand {

    @Mixin
    private OrdersOption orders = new OrdersOption();

    @Mixin
    private SupplyOption supply = new SupplyOption();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the orders' folders are written; without it 'exports/charging' here.")
    private Path out = Path.of("exports", "charging");

    @Override
    int run(Screen screen) {
        HeadStart.forSheets();
        return done(screen, orders.kits().then(kits -> Outcome.sound(charge(screen, kits))));
    }

    /** Orders that something stops are told and not worked out. */
    private int charge(Screen screen, KitsTogether kits) {
        if (!json()) {
            kits.stopped().forEach(kit -> KitText.print(screen, kit));
        }
        List<ChargedOrder> charged = kits.bills().stream()
                .map(bill -> ChargedOrder.of(kits.catalogue(), bill, supply))
                .toList();
        if (charged.isEmpty()) {
            screen.line(json() ? "{}" : "For no order of these can charging be worked out.");
            return Exit.STOPPED;
        }
        return issue(screen, charged, kits.stopped().isEmpty());
    }

    private int issue(Screen screen, List<ChargedOrder> charged, boolean all) {
        EachWritten written = EachWritten.of(charged, each -> Exports.write(out.resolve(each.name()), each.files()));
        return written.faults().isEmpty()
                ? told(screen, charged, written.paths(), all)
                : refused(written.faults(), Exit.NOT_WRITTEN);
    }

    private int told(Screen screen, List<ChargedOrder> charged, List<Path> written, boolean all) {
        if (json()) {
            screen.line(ChargeAnswer.json(charged, written));
        } else {
            charged.forEach(each -> ChargeText.print(screen, each.charging()));
            screen.line(ChargeText.written(charged.size(), out));
        }
        boolean stops = charged.stream().map(ChargedOrder::charging).anyMatch(Charging::stops);
        return all && !stops ? Exit.OK : Exit.STOPPED;
    }
}
