package boltlore.cli;

import boltlore.faults.Outcome;
import boltlore.trades.charging.Charging;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What power passes, what limits it, and whether the high-voltage system keeps its limits. */
@Command(
        name = "charging",
        description = "Work out charging power and time, export, precharge, isolation, fuses and cables, and write a"
                + " charging and high-voltage sheet for each order.")
final class ChargeCommand extends TradeCommand<ChargedOrder> {

    @Mixin
    private SupplyOption supply = new SupplyOption();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the orders' folders are written; without it 'exports/charging' here.")
    private Path out = Path.of("exports", "charging");

    @Override
    Path out() {
        return out;
    }

    @Override
    Outcome<List<ChargedOrder>> worked(KitsTogether kits) {
        return Outcome.sound(kits.bills().stream()
                .map(bill -> ChargedOrder.of(kits.catalogue(), bill, supply))
                .toList());
    }

    @Override
    String none() {
        return "For no order of these can charging be worked out.";
    }

    @Override
    String json(List<ChargedOrder> charged, List<Path> written) {
        return ChargeAnswer.json(charged, written);
    }

    @Override
    void print(Screen screen, List<ChargedOrder> charged) {
        charged.forEach(each -> ChargeText.print(screen, each.charging()));
        screen.line(ChargeText.written(charged.size(), out));
    }

    @Override
    boolean stops(List<ChargedOrder> charged) {
        return charged.stream().map(ChargedOrder::charging).anyMatch(Charging::stops);
    }
}
