package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.bill.Bill;
import boltlore.exports.Exports;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import boltlore.sheets.Workbook;
import boltlore.sheets.coating.CoatSheet;
import boltlore.sheets.orders.SheetFormats;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** One powder-coat batch for many orders. */
@Command(name = "coat", description = "Write one powder-coat batch sheet for several orders together.")
final class CoatCommand extends RoomCommand {

    @Parameters(arity = "1..*", paramLabel = "ORDER", description = "Order files, or folders of them.")
    private List<Path> orders = new ArrayList<>();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "The folder to write; without it 'exports/coating' here.")
    private Path out = Path.of("exports", "coating");

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
                        .then(kits -> Outcome.sound(batch(screen, at, kits)))));
    }

    private static Outcome<List<OrderKit>> kits(Bench bench, List<Path> files) {
        List<OrderKit> kits = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (Path file : files) {
            Outcome<OrderKit> kit = bench.kit(file, false);
            faults.addAll(kit.faults());
            if (kit instanceof Outcome.Sound<OrderKit> sound) {
                kits.add(sound.value());
            }
        }
        return faults.isEmpty() ? Outcome.sound(kits) : Outcome.faulty(faults);
    }

    /** Orders that something stops are told and stay out of the batch. */
    private int batch(Screen screen, Bench bench, List<OrderKit> kits) {
        List<OrderKit> stopped =
                kits.stream().filter(kit -> !kit.issuesSheets()).toList();
        List<Bill> bills = new ArrayList<>();
        for (OrderKit kit : kits) {
            Bill bill = kit.bill();
            if (bill != null && kit.issuesSheets()) {
                bills.add(bill);
            }
        }
        if (!json()) {
            stopped.forEach(kit -> KitText.print(screen, kit));
        }
        if (bills.isEmpty()) {
            screen.line(json() ? "[]" : "No order of these can be coated.");
            return Exit.STOPPED;
        }
        Workbook sheet = CoatSheet.of(bills, bench.catalogue());
        Outcome<List<Path>> written = Exports.write(out, SheetFormats.of(List.of(sheet)));
        if (written instanceof Outcome.Sound<List<Path>> paths) {
            told(screen, bills.size(), paths.value());
            return stopped.isEmpty() ? Exit.OK : Exit.STOPPED;
        }
        return refused(written.faults(), Exit.NOT_WRITTEN);
    }

    private void told(Screen screen, int orders, List<Path> paths) {
        if (json()) {
            screen.line(JsonOut.texts(paths).written().stripTrailing());
        } else {
            screen.line("Batch of " + orders + (orders == 1 ? " order" : " orders") + " written to " + out);
        }
    }
}
