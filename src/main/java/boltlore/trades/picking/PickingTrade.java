package boltlore.trades.picking;

import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.trades.KitInWork;
import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.TradeResult.Sheet;
import java.util.List;

/** What stores hand out, in walking order, and what goes into which bag. */
public final class PickingTrade extends Trade {

    public PickingTrade() {
        super(
                "picking",
                Room.STORES,
                "Write the picking list of each order: what to take from which bin, from coating and from outside the kit,"
                        + " and what goes into which bag.",
                "Nothing of these orders can be picked.",
                List.of(PickingFinding.values()));
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return Outcome.sound(kits.stream().map(PickingTrade::work).toList());
    }

    private static TradeResult work(KitInWork kit) {
        PickingList list = list(kit);
        Findings findings = list.findings(kit);
        Sheet sheet = Sheet.always(() -> PickingReport.compose(kit, list, findings));
        return new TradeResult(kit.order().name(), findings, List.of(sheet));
    }

    /** What is picked for the kit, which packing and shipping go by as well. */
    public static PickingList list(KitInWork kit) {
        return kit.once(PickingList.class, own -> PickingList.of(own.plan(), own.bill()));
    }
}
