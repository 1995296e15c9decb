package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.trades.coating.RecordVerdict;
import boltlore.trades.coating.sheets.CoatJob;
import boltlore.trades.coating.sheets.RecordSheet;
import boltlore.trades.coating.written.ShopRecord;
import boltlore.trades.orders.SheetFormats;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Film readings and powder of orders coated together, judged. */
@Command(
        name = "film-check",
        description = "Judge film readings, and powder issued, of orders that were coated together.")
final class FilmCommand extends RoomCommand {

    @Mixin
    private CoatedOrders orders = new CoatedOrders();

    @Option(
            names = "--record",
            paramLabel = "FILE",
            required = true,
            description = {
                "What the coating shop wrote down; may be given more than once. A CSV table of the batch sheet, filled in:",
                "film readings (batch, part, piece, reading 1 to 5), or powder (run, issued).",
                "Or JSON: {\"readings\": [{\"batch\": 1, \"part\": \"…\", \"piece\": \"…\", \"um\": [70, 71, 69, 74, 70]}],",
                "\"issued\": [{\"run\": 1, \"kg\": \"3.4\"}]}"
            })
    private List<Path> records = new ArrayList<>();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "The folder to write; without it 'exports/coating-record' here.")
    private Path out = Path.of("exports", "coating-record");

    @Override
    int run(Screen screen) {
        HeadStart.forSheets();
        return done(
                screen,
                orders.kits()
                        .then(kits -> kits.job(null)
                                .map(job -> judged(screen, job))
                                .orElseGet(() -> Outcome.sound(nothing(screen)))));
    }

    private int nothing(Screen screen) {
        screen.line(json() ? "{}" : CoatAnswer.NOTHING);
        return Exit.STOPPED;
    }

    private Outcome<Integer> judged(Screen screen, CoatJob job) {
        return ShopRecord.read(records, job.plan())
                .then(this::filledIn)
                .then(record -> Outcome.sound(issue(
                        screen, job, RecordVerdict.of(job.plan(), record.film(), record.issued(), job.workshop()))));
    }

    private Outcome<ShopRecord> filledIn(ShopRecord record) {
        return record.film().isEmpty() && record.issued().isEmpty()
                ? Outcome.faulty(records.stream()
                        .map(file -> Fault.of(
                                file.toString(),
                                "nothing filled in",
                                "film readings, or powder that was issued",
                                "Fill it in first."))
                        .toList())
                : Outcome.sound(record);
    }

    private int issue(Screen screen, CoatJob job, RecordVerdict verdict) {
        Outcome<List<Path>> written = write(out, SheetFormats.of(List.of(RecordSheet.of(verdict, job))));
        if (written instanceof Outcome.Sound<List<Path>> paths) {
            if (json()) {
                screen.line(FilmAnswer.json(verdict, paths.value()));
            } else {
                FilmAnswer.print(screen, verdict);
            }
            return verdict.accepted() ? Exit.OK : Exit.STOPPED;
        }
        return refused(written.faults(), Exit.NOT_WRITTEN);
    }
}
