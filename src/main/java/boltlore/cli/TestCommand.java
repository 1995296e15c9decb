package boltlore.cli;

import boltlore.exports.Exports;
import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is tested of finished kits, with this kit's limits. */
@Command(
        name = "test",
        description =
                "Write the end-of-line test sheet of each order with this kit's limits, its labels and manual sections, and"
                        + " a record to be filled in.")
final class TestCommand extends RoomCommand {

    @Mixin
    private OrdersOption orders = new OrdersOption();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the orders' folders are written; without it 'exports/testing' here.")
    private Path out = Path.of("exports", "testing");

    @Override
    int run(Screen screen) {
        HeadStart.forSheets();
        return done(screen, orders.kits().then(kits -> Outcome.sound(test(screen, kits))));
    }

    /** Orders that something stops are told and get no sheet. */
    private int test(Screen screen, KitsTogether kits) {
        if (!json()) {
            kits.stopped().forEach(kit -> KitText.print(screen, kit));
        }
        List<TestedOrder> tested = kits.bills().stream()
                .map(bill -> TestedOrder.of(kits.catalogue(), bill))
                .filter(order -> !order.plan().groups().isEmpty())
                .toList();
        if (tested.isEmpty()) {
            screen.line(json() ? "{}" : "No order of these has a kit that its family says how to test.");
            return Exit.STOPPED;
        }
        return issue(screen, tested, tested.size() == kits.kits().size());
    }

    private int issue(Screen screen, List<TestedOrder> tested, boolean all) {
        EachWritten written = EachWritten.of(tested, this::write);
        return written.faults().isEmpty()
                ? told(screen, tested, written.paths(), all)
                : refused(written.faults(), Exit.NOT_WRITTEN);
    }

    /** A record that somebody has filled in is not written over. */
    private Outcome<List<Path>> write(TestedOrder order) {
        Path folder = out.resolve(order.name());
        return FilledRecords.none(folder).then(none -> Exports.write(folder, order.files()));
    }

    private int told(Screen screen, List<TestedOrder> tested, List<Path> written, boolean all) {
        if (json()) {
            screen.line(TestAnswer.json(tested, written));
        } else {
            tested.forEach(each -> TestText.print(screen, each.plan()));
            screen.line(TestText.written(tested.size(), out));
        }
        return all ? Exit.OK : Exit.STOPPED;
    }
}
