package boltlore.cli;

import boltlore.faults.Outcome;
import boltlore.report.Workbook;
import boltlore.trades.coating.sheets.CoatJob;
import boltlore.trades.coating.sheets.CoatSheet;
import boltlore.trades.coating.sheets.HangingSheet;
import boltlore.trades.orders.SheetFormats;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The coating of many orders together. */
@Command(
        name = "coat",
        description = "Plan the coating of several orders together and write their powder-coat batch sheet.")
final class CoatCommand extends RoomCommand {

    @Mixin
    private CoatedOrders orders = new CoatedOrders();

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

    @Option(names = "--hanging", description = "Also draw how each oven load may hang, as a hanging plan.")
    private boolean hanging;

    @Override
    int run(Screen screen) {
        HeadStart.forSheets();
        return done(screen, orders.kits().then(kits -> Outcome.sound(batch(screen, kits))));
    }

    /** Orders that something stops are told and stay out of the batch. */
    private int batch(Screen screen, CoatedKits kits) {
        if (!json()) {
            kits.stopped().forEach(kit -> KitText.print(screen, kit));
        }
        Optional<CoatJob> job = kits.job(start);
        if (job.isEmpty()) {
            screen.line(json() ? "{}" : CoatAnswer.NOTHING);
            return Exit.STOPPED;
        }
        int issued = issue(screen, job.get());
        return issued == Exit.OK && !kits.stopped().isEmpty() ? Exit.STOPPED : issued;
    }

    private int issue(Screen screen, CoatJob job) {
        Outcome<List<Path>> written = write(out, SheetFormats.ofEach(books(job)));
        if (written instanceof Outcome.Sound<List<Path>> paths) {
            if (json()) {
                screen.line(CoatAnswer.json(job, paths.value()));
            } else {
                CoatAnswer.print(screen, job, out);
            }
            return Exit.OK;
        }
        return refused(written.faults(), Exit.NOT_WRITTEN);
    }

    private List<Supplier<Workbook>> books(CoatJob job) {
        Supplier<Workbook> batch = () -> CoatSheet.of(job);
        return hanging ? List.of(batch, () -> HangingSheet.of(job)) : List.of(batch);
    }
}
