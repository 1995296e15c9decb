package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.bill.Bill;
import boltlore.exports.Exports;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.weighing.Weighing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What kits do to the weights of their donor vehicles. */
@Command(
        name = "weigh",
        description =
                "Work out axle loads before and after conversion, compare them with the limits, and write a weight"
                        + " statement for each order.")
final class WeighCommand extends RoomCommand {

    @Parameters(arity = "1..*", paramLabel = "ORDER", description = "Order files, or folders of them.")
    private List<Path> orders = new ArrayList<>();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the orders' folders are written; without it 'exports/weighing' here.")
    private Path out = Path.of("exports", "weighing");

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    int run(Screen screen) {
        HeadStart.forSheets();
        Outcome<Bench> bench = Bench.of(catalogue);
        return done(
                screen,
                bench.then(at -> OrderFiles.of(orders)
                        .then(files -> kits(at, files))
                        .then(kits -> Outcome.sound(weigh(screen, at, kits)))));
    }

    private static Outcome<List<OrderKit>> kits(Bench bench, List<Path> files) {
        List<OrderKit> kits = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (Path file : files) {
            Outcome<OrderKit> kit = bench.kit(file, false).then(read -> once(file, read, kits));
            faults.addAll(kit.faults());
            if (kit instanceof Outcome.Sound<OrderKit> sound) {
                kits.add(sound.value());
            }
        }
        return faults.isEmpty() ? Outcome.sound(kits) : Outcome.faulty(faults);
    }

    /** Each order has a folder of its name. */
    private static Outcome<OrderKit> once(Path file, OrderKit kit, List<OrderKit> before) {
        String name = kit.order().name();
        return before.stream().anyMatch(other -> other.order().name().equals(name))
                ? Outcome.faulty(Fault.of(
                        file.toString(),
                        "order " + name + ", which is among the orders already",
                        "an order that is not there yet",
                        "Give each order once."))
                : Outcome.sound(kit);
    }

    /** Orders that something stops are told and not weighed. */
    private int weigh(Screen screen, Bench bench, List<OrderKit> kits) {
        List<WeighedOrder> weighed = new ArrayList<>();
        boolean all = true;
        for (OrderKit kit : kits) {
            Bill bill = kit.bill();
            if (bill != null && kit.issuesSheets()) {
                weighed.add(WeighedOrder.of(bench.catalogue(), bill));
            } else {
                all = false;
                told(screen, kit);
            }
        }
        if (weighed.isEmpty()) {
            screen.line(json() ? "{}" : "No order of these can be weighed.");
            return Exit.STOPPED;
        }
        return issue(screen, weighed, all);
    }

    private void told(Screen screen, OrderKit kit) {
        if (!json()) {
            KitText.print(screen, kit);
        }
    }

    private int issue(Screen screen, List<WeighedOrder> weighed, boolean all) {
        List<Path> written = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (WeighedOrder each : weighed) {
            Outcome<List<Path>> outcome = Exports.write(out.resolve(each.name()), each.files());
            faults.addAll(outcome.faults());
            if (outcome instanceof Outcome.Sound<List<Path>> paths) {
                written.addAll(paths.value());
            }
        }
        return faults.isEmpty() ? told(screen, weighed, written, all) : refused(faults, Exit.NOT_WRITTEN);
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
