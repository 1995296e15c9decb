package boltlore.cli;

import boltlore.faults.Outcome;
import boltlore.trades.weighing.Weighing;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What kits do to the weights of their donor vehicles. */
@Command(
        name = "axle-loads",
        description =
                "Work out axle loads before and after conversion, compare them with the limits, and write a weight"
                        + " statement for each order.")
final class WeighCommand extends OldTradeCommand<WeighedOrder> {

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the orders' folders are written; without it 'exports/weighing' here.")
    private Path out = Path.of("exports", "weighing");

    @Override
    Path out() {
        return out;
    }

    @Override
    Outcome<List<WeighedOrder>> worked(KitsTogether kits) {
        return Outcome.sound(kits.bills().stream()
                .map(bill -> WeighedOrder.of(kits.catalogue(), bill))
                .toList());
    }

    @Override
    String none() {
        return "No order of these can be weighed.";
    }

    @Override
    String json(List<WeighedOrder> weighed, List<Path> written) {
        return WeighAnswer.json(weighed, written);
    }

    @Override
    void print(Screen screen, List<WeighedOrder> weighed) {
        weighed.forEach(each -> WeighText.print(screen, each));
        screen.line(WeighText.written(weighed.size(), out));
    }

    @Override
    boolean stops(List<WeighedOrder> weighed) {
        return weighed.stream().map(WeighedOrder::weighing).anyMatch(Weighing::stops);
    }
}
