package boltlore.cli;

import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.db.Shop;
import boltlore.book.db.Shop.Piece;
import boltlore.book.stores.FilmDesk;
import boltlore.book.stores.RackDesk;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.json.TextShape;
import boltlore.report.Report;
import boltlore.trades.KitInWork;
import boltlore.trades.coating.CoatJob;
import boltlore.trades.coating.FilmSheet;
import boltlore.trades.coating.RecordVerdict;
import boltlore.trades.coating.written.ShopRecord;
import boltlore.trades.testing.Judge;
import boltlore.trades.testing.Reading;
import boltlore.trades.testing.TestPlan;
import boltlore.trades.testing.TestPlanner;
import boltlore.trades.testing.TestRecord;
import boltlore.trades.testing.TestReport;
import boltlore.trades.testing.Verdict;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Filled-in records. */
@Command(
        name = "record",
        description = "Judge filled-in records of frozen orders and keep them in the book: film, test, list;"
                + " 'record --help' lists how.",
        subcommands = {RecordCommand.Film.class, RecordCommand.Test.class, RecordCommand.Listed.class})
final class RecordCommand extends BookGroup {

    /** Commands that judge and keep. */
    abstract static class Judging extends FrozenCommand {

        @Option(
                names = "--out",
                paramLabel = "FOLDER",
                description = "Where the report is written; without it exports/record.")
        private Path out = Path.of("exports", "record");

        /** Writes and tells the report of what was kept. */
        Outcome<Integer> told(Screen screen, String of, Report report, boolean passed) {
            return PurchaseCommand.sheets(this, screen, out, of, report.findings(), List.of(report))
                    .then(exit -> Outcome.sound(passed ? exit : Math.max(exit, Exit.STOPPED)));
        }

        static List<String> codes(Report report) {
            return report.findings().all().stream()
                    .map(Finding::kind)
                    .map(kind -> kind.code())
                    .distinct()
                    .toList();
        }

        /** All files one after the other, as they are. */
        static Outcome<byte[]> bytes(List<Path> files) {
            return Outcome.all(files.stream().map(JsonFile::bytes).toList()).then(all -> {
                ByteArrayOutputStream together = new ByteArrayOutputStream();
                all.forEach(together::writeBytes);
                return Outcome.sound(together.toByteArray());
            });
        }
    }

    /** Film. */
    @Command(
            name = "film",
            description = "Judge film readings, and powder issued, of orders coated together, and keep them.")
    static final class Film extends Judging {

        @Parameters(arity = "1..*", paramLabel = "ORDER", description = "Numbers of the orders.")
        private List<String> orders = new ArrayList<>();

        @Option(
                names = "--record",
                paramLabel = "FILE",
                required = true,
                description = "What was written down; may be given again.")
        private List<Path> files = new ArrayList<>();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            HeadStart.forSheets();
            return orders(orders)
                    .then(names -> inStores(
                            place,
                            (book, catalogue) -> frozen(book, catalogue, (reading, kits) -> kits.of(names))
                                    .then(kits -> judged(screen, book, catalogue, names, kits))));
        }

        private Outcome<Integer> judged(
                Screen screen, Book book, Catalogue catalogue, List<String> names, List<KitInWork> kits) {
            CoatJob job = CoatJob.of(kits, List.of(), null).orElse(null);
            if (job == null) {
                return Outcome.faulty(Fault.of("", "orders of which nothing is coated", "one with a coated part", ""));
            }
            return ShopRecord.read(files, job.plan()).then(record -> {
                RecordVerdict verdict =
                        RecordVerdict.of(job.plan(), record.filmRead(), record.film(), record.issued(), job.workshop());
                Report report = FilmSheet.compose(verdict, job);
                boolean passed = !report.findings().stops();
                return reason().then(why -> by().then(by -> bytes(files)
                        .then(bytes -> new FilmDesk(book, by, catalogue)
                                .keep(names, bytes, new FilmDesk.Film(job.plan(), verdict, passed, codes(report)), why))
                        .then(written -> {
                            rejected(screen, written.value().rejected());
                            return told(screen, "film", report, passed);
                        })));
            });
        }

        private void rejected(Screen screen, List<Piece> pieces) {
            if (!pieces.isEmpty() && !json()) {
                screen.wrapped(
                        0,
                        "Rejected in the coating shop: "
                                + pieces.stream().map(Piece::piece).collect(Collectors.joining(", ")) + ".");
            }
        }
    }

    /** Test. */
    @Command(
            name = "test",
            description = "Judge the record of an order's end-of-line test, and keep it; a retest stands beside it.")
    static final class Test extends Judging {

        @Parameters(index = "0", paramLabel = "ORDER", description = "Number of the order.")
        private String order = "";

        @Parameters(
                index = "1",
                arity = "1..*",
                paramLabel = "FILE",
                description = "Filled-in records; a later reading replaces an earlier one.")
        private List<Path> files = new ArrayList<>();

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            HeadStart.forSheets();
            return Said.text("ORDER", order, TextShape.ORDER_NAME)
                    .then(name -> inStores(
                            place,
                            (book, catalogue) -> kit(book, catalogue, name)
                                    .then(kit -> records(name).then(records -> judged(screen, book, kit, records)))));
        }

        private Outcome<List<TestRecord>> records(String name) {
            return Outcome.all(files.stream().map(TestRecord::read).toList()).then(all -> {
                List<TestRecord> records = all.stream().flatMap(List::stream).toList();
                List<Fault> others = records.stream()
                        .filter(record -> !record.order().equals(name))
                        .map(record -> Fault.of(
                                record.file(), "a record of order " + record.order(), "one of order " + name, ""))
                        .toList();
                return others.isEmpty() ? Outcome.sound(records) : Outcome.faulty(others);
            });
        }

        private Outcome<Integer> judged(Screen screen, Book book, KitInWork kit, List<TestRecord> records) {
            TestPlan plan = TestPlanner.plan(kit.catalogue(), kit.bill());
            List<Fault> others = records.stream()
                    .filter(record -> !record.limits().equals(plan.limits()))
                    .map(record -> JudgedRecords.otherLimits(record, plan))
                    .toList();
            if (!others.isEmpty()) {
                return Outcome.faulty(others);
            }
            List<Reading> readings = records.stream()
                    .flatMap(record -> record.readings().stream())
                    .toList();
            Verdict verdict = Judge.judge(plan, readings, today());
            Report report = TestReport.compose(verdict, kit.catalogue().workshop());
            return reason().then(why -> by().then(by -> bytes(files)
                    .then(record -> new RackDesk(book, by)
                            .keep(List.of(kit.order().name()), "test", record, verdict.passed(), codes(report), why))
                    .then(written -> told(screen, "test", report, verdict.passed()))));
        }
    }

    /** What is kept. */
    @Command(
            name = "list",
            description = "List the records that are kept of an order, the last of each kind is the one that counts.")
    static final class Listed extends FrozenCommand {

        @Mixin
        private Listing listing = new Listing();

        @Parameters(paramLabel = "ORDER", description = "Number of the order.")
        private String order = "";

        @Override
        Outcome<Integer> answer(Screen screen, Place place) {
            return Said.text("ORDER", order, TextShape.ORDER_NAME)
                    .then(name -> inBook(
                            place,
                            book -> book.read(reading -> listed(
                                    screen,
                                    listing,
                                    reading.shop().records(name),
                                    Listed::asJson,
                                    Listed::says,
                                    "No record is kept of it."))));
        }

        private static JsonOut asJson(Shop.KeptRecord record) {
            return JsonOut.object()
                    .put("order", record.order())
                    .put("entry", record.entry())
                    .put("of", record.of())
                    .put("passed", record.passed())
                    .put("findings", JsonOut.texts(record.findings()))
                    .put("content", record.content());
        }

        private static String says(Shop.KeptRecord record) {
            return "entry " + record.entry() + ": " + record.of() + ", " + (record.passed() ? "passed" : "not passed")
                    + (record.findings().isEmpty() ? "" : " (" + String.join(", ", record.findings()) + ")");
        }
    }
}
