package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.faults.Outcome;
import boltlore.report.Report;
import boltlore.trades.FoundBy;
import boltlore.trades.coating.CoatJob;
import boltlore.trades.coating.CoatingTrade;
import boltlore.trades.coating.FilmSheet;
import boltlore.trades.coating.RecordVerdict;
import boltlore.trades.coating.written.ShopRecord;
import boltlore.trades.orders.SheetFormats;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Film readings and powder of orders coated together, judged. */
@Command(
        name = "film-check",
        description = "Judge film readings, and powder issued, of orders that were coated together.")
final class FilmCommand extends RoomCommand {

    @Mixin
    private OrdersOption orders = new OrdersOption();

    @Option(
            names = "--late",
            paramLabel = "ORDER",
            description = "One more order file: the one that came late, where the plan was made with it.")
    private @Nullable Path late;

    @Option(
            names = "--record",
            paramLabel = "FILE",
            required = true,
            description = {
                "What the coating shop wrote down; may be given more than once. The tables that 'coat' writes, filled in:",
                "powder-coat-batch-film.csv (readings, accepted or not), powder-coat-batch-powder-use.csv (issued),",
                "or powder-coat-batch-record.json. A reading goes by its piece and the code of its film limits; of a piece",
                "that was coated or read again the last one counts (coating, on)."
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
        return done(screen, orders.kits(Stream.ofNullable(late).toList()).then(kits -> judged(screen, kits)));
    }

    private Outcome<Integer> judged(Screen screen, KitsTogether kits) {
        List<OrderKit> all = kits.kits();
        String lateName = late == null ? null : all.get(all.size() - 1).order().name();
        Optional<CoatJob> job = CoatJob.of(kits.inWork(), kits.stoppedOrders(), lateName);
        if (job.isEmpty()) {
            if (!json()) {
                kits.stopped().forEach(kit -> KitText.print(screen, kit));
            }
            screen.line(json() ? TradeAnswer.json(TradeAnswer.stopped(kits), List.of()) : CoatingTrade.NOTHING);
            return Outcome.sound(Exit.STOPPED);
        }
        return judged(screen, job.get());
    }

    private Outcome<Integer> judged(Screen screen, CoatJob job) {
        return ShopRecord.read(records, job.plan())
                .then(record -> Outcome.sound(issue(
                        screen,
                        job,
                        RecordVerdict.of(
                                job.plan(), record.filmRead(), record.film(), record.issued(), job.workshop()))));
    }

    private int issue(Screen screen, CoatJob job, RecordVerdict verdict) {
        Report report = FilmSheet.compose(verdict, job);
        Outcome<List<Path>> written = write(out, SheetFormats.write(List.of(report)));
        if (!(written instanceof Outcome.Sound<List<Path>> paths)) {
            return refused(written.faults(), Exit.NOT_WRITTEN);
        }
        FoundBy found = new FoundBy("film-check", report.findings());
        List<String> orders =
                job.through().stream().map(order -> order.order().name()).toList();
        List<TradeAnswer.OfOrder> answers = List.of(new TradeAnswer.OfOrder(orders, found, List.of(report)));
        if (json()) {
            screen.line(TradeAnswer.json(answers, paths.value()));
        } else {
            TradeAnswer.print(screen, answers, out);
        }
        return report.findings().stops() ? Exit.STOPPED : Exit.OK;
    }
}
