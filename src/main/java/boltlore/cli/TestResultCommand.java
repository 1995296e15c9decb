package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.report.Report;
import boltlore.trades.FoundBy;
import boltlore.trades.orders.SheetFormats;
import boltlore.trades.testing.TestReport;
import boltlore.trades.testing.Verdict;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Filled-in records of tests, judged. */
@Command(
        name = "test-result",
        description =
                "Judge filled-in records of end-of-line tests: name what failed and what is missing, and write a test"
                        + " report for each order.")
final class TestResultCommand extends RoomCommand {

    @Parameters(
            arity = "1..*",
            paramLabel = "FILE",
            description =
                    "Filled-in records, CSV or JSON, of one order or of several. A later reading replaces an earlier one.")
    private List<Path> files = new ArrayList<>();

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Option(
            names = "--order",
            paramLabel = "ORDER",
            description = "Order files, or folders of them, among which the records' orders are; without it the folder"
                    + " 'orders' of the catalogue.")
    private List<Path> orders = new ArrayList<>();

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Where the orders' folders are written; without it 'exports/test-report' here.")
    private Path out = Path.of("exports", "test-report");

    @Override
    int run(Screen screen) {
        HeadStart.forSheets();
        List<Path> among = orders.isEmpty() ? List.of(catalogue.folder().resolve("orders")) : orders;
        return done(
                screen,
                CatalogueSession.of(catalogue)
                        .then(session -> JudgedRecords.read(
                                        session, files, among, LocalDate.now(ZoneId.systemDefault()))
                                .then(verdicts -> Outcome.sound(issue(screen, session, verdicts)))));
    }

    private int issue(Screen screen, CatalogueSession session, List<Verdict> verdicts) {
        List<Path> written = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        List<TradeAnswer.OfOrder> answers = new ArrayList<>();
        for (Verdict verdict : verdicts) {
            Report report = TestReport.compose(verdict, session.catalogue().workshop());
            Outcome<List<Path>> outcome =
                    write(out.resolve(verdict.plan().order()), SheetFormats.write(List.of(report)));
            faults.addAll(outcome.faults());
            outcome.then(paths -> Outcome.sound(written.addAll(paths)));
            FoundBy found = FoundBy.of(
                    "test-result", report.findings(), verdict.plan().bill().order());
            answers.add(new TradeAnswer.OfOrder(List.of(verdict.plan().order()), found, List.of(report)));
        }
        if (!faults.isEmpty()) {
            return refused(faults, Exit.NOT_WRITTEN);
        }
        if (json()) {
            screen.line(TradeAnswer.json(answers, written));
        } else {
            TradeAnswer.print(screen, answers, out);
        }
        return verdicts.stream().allMatch(Verdict::passed) ? Exit.OK : Exit.STOPPED;
    }
}
