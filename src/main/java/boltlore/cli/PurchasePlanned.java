package boltlore.cli;

import boltlore.book.db.Place;
import boltlore.book.stores.OwedPlan;
import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.report.Report;
import boltlore.trades.TradeResult;
import boltlore.trades.buying.BuyingTrade;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes the purchase list. */
@Command(
        name = "plan",
        description =
                "Write one purchase list for all owed orders against what the stores hold, by supplier, and what is to"
                        + " make and to coat by when.")
final class PurchasePlanned extends FrozenCommand {

    @Option(
            names = "--on",
            paramLabel = "DATE",
            converter = Day.class,
            description = "Plan from that day on; without it today.")
    private @Nullable LocalDate on;

    @Option(names = "--out", paramLabel = "FOLDER", description = "Where it is written; without it ${DEFAULT-VALUE}.")
    private Path out = Path.of("exports", "purchase");

    @Override
    Outcome<Integer> answer(Screen screen, Place place) {
        HeadStart.forSheets();
        return inStores(
                place,
                (book, catalogue) -> StockShort.plan(
                                this,
                                book,
                                catalogue,
                                on,
                                (reading, plan) -> BuyingTrade.work(plan, OwedPlan.apart(reading, plan), Findings.NONE))
                        .then(result -> issue(screen, result)));
    }

    private Outcome<Integer> issue(Screen screen, TradeResult result) {
        List<Report> reports =
                result.sheets().stream().map(sheet -> sheet.report().get()).toList();
        return PurchaseCommand.sheets(this, screen, out, "purchase", result.findings(), reports);
    }
}
