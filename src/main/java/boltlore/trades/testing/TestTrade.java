package boltlore.trades.testing;

import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.trades.KitFinding;
import boltlore.trades.KitInWork;
import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import java.util.ArrayList;
import java.util.List;

/** What is tested of finished kits, with this kit's limits, and the records to be filled in. */
public final class TestTrade extends Trade {

    static final String NAME = "test";

    public TestTrade() {
        super(
                NAME,
                Room.BENCH,
                "Write the end-of-line test sheet of each order with this kit's limits, its labels and manual sections, and"
                        + " a record to be filled in.",
                "No order of these has a kit that its family says how to test.",
                List.of(TestingFinding.values()));
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return Outcome.sound(kits.stream().map(TestTrade::work).toList());
    }

    private static TradeResult work(KitInWork kit) {
        TestPlan plan = kit.once(TestPlan.class, own -> TestPlanner.plan(own.catalogue(), own.bill()));
        if (plan.groups().isEmpty()) {
            Finding none = Finding.of(KitFinding.NOT_JUDGED, NAME, "trade", "End-of-line test", "file", "tests.json");
            return new TradeResult(kit.order().name(), Findings.of(none), List.of());
        }
        List<TradeResult.Sheet> sheets = new ArrayList<>();
        sheets.add(
                new TradeResult.Sheet("", () -> TestSheet.sheet(plan, kit.workshop()), () -> EmptyRecord.write(plan)));
        if (!plan.labels().isEmpty() || !plan.sections().isEmpty()) {
            sheets.add(TradeResult.Sheet.of(() -> TestSheet.papers(plan, kit.workshop())));
        }
        return new TradeResult(kit.order().name(), findings(plan), sheets);
    }

    static Findings findings(TestPlan plan) {
        return plan.rows()
                .filter(row -> row.limit() instanceof Limit.Unknown)
                .map(row -> Finding.of(
                        TestingFinding.LIMIT_NOT_KNOWN,
                        row.key(),
                        "tested",
                        TestWords.each(words -> words.tested(row)),
                        "missing",
                        TestWords.each(words -> words.notKnown(((Limit.Unknown) row.limit()).what()))))
                .collect(Findings.collected());
    }
}
