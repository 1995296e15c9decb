package boltlore.trades.fixings;

import boltlore.faults.Outcome;
import boltlore.proof.fits.Terminals.Terminal;
import boltlore.report.PageBuilder;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.trades.KitInWork;
import boltlore.trades.KitReport;
import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.TradeResult.Sheet;
import boltlore.trades.fixings.FixingsMaker.KitFixings;
import java.util.List;

/** What is bolted to what, with torques, spares and counts by weight. */
public final class FixingsTrade extends Trade {

    private static final String TITLE = "Fixings";

    private static final TradeOption<Boolean> CARDS = TradeOption.flag(
            "--cards",
            "Write the fitter's cards too: by fit stage, in the order's language, with a card for each bag.");

    public FixingsTrade() {
        super(
                "fixings",
                Room.BENCH,
                "List bolts, nuts and washers by joint and by bag with their torques, judge each joint, and write a"
                        + " fixings sheet for each order.",
                "No order of these has fixings to list.",
                List.of(FixingFinding.values()),
                List.of(CARDS));
    }

    @Override
    public Given forKit() {
        return Given.NONE.with(CARDS, true);
    }

    /** Each bolt of the kit at its joint. */
    public static List<BoltedJoint> joints(KitInWork kit) {
        return new JointsOfKit(kit.plan(), kit.bill()).all();
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        boolean cards = options.has(CARDS);
        return Outcome.sound(kits.stream().map(kit -> work(kit, cards)).toList());
    }

    /** The workshop's sheet, and what goes with the kit in the folder of what leaves the house. */
    private static TradeResult work(KitInWork kit, boolean cards) {
        KitFixings fixings = FixingsMaker.make(kit);
        Sheet sheet = Sheet.of(() -> report(fixings, kit));
        Sheet forFitter = new Sheet(TradeResult.FOR_CUSTOMERS, () -> new FitterCards(kit).report(), List::of);
        List<Sheet> sheets = cards && FitterCards.any(kit) ? List.of(sheet, forFitter) : List.of(sheet);
        return new TradeResult(kit.order().name(), fixings.findings(), sheets);
    }

    static Report report(KitFixings fixings, KitInWork kit) {
        String footer = KitReport.footer(kit, TITLE);
        PageBuilder signed = SafetyPage.compose(fixings, kit.workshop(), footer);
        if (!fixings.clamped().isEmpty()) {
            signed.also(ClampPage.compose(fixings, footer));
        }
        ReportBuilder report = KitReport.begin(kit, "fixings", TITLE, FixingsTrade.class)
                .found(kit.answered(fixings.findings()))
                .glance(JointsPage.glance(fixings, kit.workshop().language()).build())
                .glance(JointsPage.figures("glance", fixings).build())
                .page(JointsPage.compose(fixings, kit, footer))
                .page(signed);
        List<Terminal> terminals = TerminalsPage.of(kit);
        if (!terminals.isEmpty()) {
            report.page(TerminalsPage.compose(terminals, kit.workshop(), footer));
        }
        return report.page(BagsPage.compose(fixings, kit.catalogue(), footer)).build();
    }
}
