package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.coating.CoatPlanner;
import boltlore.coating.LateMoves;
import boltlore.exports.Exports;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.sheets.coating.CoatJob;
import boltlore.sheets.coating.CoatSheet;
import boltlore.sheets.orders.SheetFormats;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The coating of many orders together. */
@Command(
        name = "coat",
        description = "Plan the coating of several orders together and write their powder-coat batch sheet.")
final class CoatCommand extends RoomCommand {

    @Parameters(arity = "1..*", paramLabel = "ORDER", description = "Order files, or folders of them.")
    private List<Path> orders = new ArrayList<>();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "The folder to write; without it 'exports/coating' here.")
    private Path out = Path.of("exports", "coating");

    @Option(
            names = "--start",
            paramLabel = "DATE",
            converter = Day.class,
            description = "First working day (2026-06-01): days become dates, and orders that come late are told.")
    private @Nullable LocalDate start;

    @Option(
            names = "--late",
            paramLabel = "ORDER",
            description = "One more order file: say what it moves in the plan of the others, which stays as it is.")
    private @Nullable Path late;

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
                        .then(kits -> late(at, kits)
                                .then(lateKits -> Outcome.sound(
                                        batch(screen, at, kits, lateKits.isEmpty() ? null : lateKits.get(0)))))));
    }

    /** The late order, or none; it must not be among the others. */
    private Outcome<List<OrderKit>> late(Bench bench, List<OrderKit> kits) {
        Path file = late;
        return file == null
                ? Outcome.sound(List.of())
                : kits(bench, List.of(file)).then(lateKits -> another(file, lateKits, kits));
    }

    private static Outcome<List<OrderKit>> another(Path file, List<OrderKit> lateKits, List<OrderKit> kits) {
        String name = lateKits.get(0).order().name();
        boolean again = kits.stream().anyMatch(kit -> kit.order().name().equals(name));
        String found = "order " + name + ", which is among the orders planned already";
        return again
                ? Outcome.faulty(Fault.of(
                        file.toString(),
                        found,
                        "an order that is not planned yet",
                        "Leave it out of the others, or give it without --late."))
                : Outcome.sound(lateKits);
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
    private int batch(Screen screen, Bench bench, List<OrderKit> kits, @Nullable OrderKit lateKit) {
        Stream<OrderKit> all = Stream.concat(kits.stream(), Stream.ofNullable(lateKit));
        List<OrderKit> stopped = all.filter(kit -> !kit.issuesSheets()).toList();
        if (!json()) {
            stopped.forEach(kit -> KitText.print(screen, kit));
        }
        List<Bill> bills = bills(kits);
        if (bills.isEmpty()) {
            return nothing(screen, "No order of these can be coated.");
        }
        return lateKit != null && stopped.contains(lateKit)
                ? nothing(screen, "The late order cannot be coated.")
                : issue(screen, job(bench.catalogue(), bills, lateKit), stopped.isEmpty());
    }

    private int nothing(Screen screen, String says) {
        screen.line(json() ? "{}" : says);
        return Exit.STOPPED;
    }

    private static List<Bill> bills(List<OrderKit> kits) {
        List<Bill> bills = new ArrayList<>();
        for (OrderKit kit : kits) {
            Bill bill = kit.bill();
            if (bill != null && kit.issuesSheets()) {
                bills.add(bill);
            }
        }
        return bills;
    }

    private CoatJob job(Catalogue known, List<Bill> bills, @Nullable OrderKit lateKit) {
        Bill lateBill = lateKit == null ? null : lateKit.bill();
        if (lateBill == null) {
            return new CoatJob(CoatPlanner.of(bills, known), known.workshop(), start, null);
        }
        LateMoves moves = LateMoves.of(bills, lateBill, known);
        return new CoatJob(moves.after(), known.workshop(), start, moves);
    }

    private int issue(Screen screen, CoatJob job, boolean all) {
        Outcome<List<Path>> written = Exports.write(out, SheetFormats.of(List.of(CoatSheet.of(job))));
        if (written instanceof Outcome.Sound<List<Path>> paths) {
            if (json()) {
                screen.line(CoatAnswer.json(job, paths.value()));
            } else {
                CoatAnswer.print(screen, job, out);
            }
            return all ? Exit.OK : Exit.STOPPED;
        }
        return refused(written.faults(), Exit.NOT_WRITTEN);
    }
}
