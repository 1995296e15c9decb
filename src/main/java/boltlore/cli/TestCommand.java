package boltlore.cli;

import boltlore.faults.Outcome;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What is tested of finished kits, with this kit's limits. */
@Command(
        name = "test",
        description =
                "Write the end-of-line test sheet of each order with this kit's limits, its labels and manual sections, and"
                        + " a record to be filled in.")
final class TestCommand extends OldTradeCommand<TestedOrder> {

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the orders' folders are written; without it 'exports/testing' here.")
    private Path out = Path.of("exports", "testing");

    @Override
    Path out() {
        return out;
    }

    @Override
    Outcome<List<TestedOrder>> worked(KitsTogether kits) {
        return Outcome.sound(kits.bills().stream()
                .map(bill -> TestedOrder.of(kits.catalogue(), bill))
                .filter(order -> !order.plan().groups().isEmpty())
                .toList());
    }

    @Override
    String none() {
        return "No order of these has a kit that its family says how to test.";
    }

    @Override
    String json(List<TestedOrder> tested, List<Path> written) {
        return TestAnswer.json(tested, written);
    }

    @Override
    void print(Screen screen, List<TestedOrder> tested) {
        tested.forEach(each -> TestText.print(screen, each.plan()));
        screen.line(TestText.written(tested.size(), out));
    }

    @Override
    boolean stops(List<TestedOrder> tested) {
        return false;
    }
}
