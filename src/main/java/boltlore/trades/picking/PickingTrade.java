package boltlore.trades.picking;

import boltlore.bill.Bill;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.trades.KitInWork;
import boltlore.trades.Room;
import boltlore.trades.Trade;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeOption.Given;
import boltlore.trades.TradeResult;
import boltlore.trades.TradeResult.Sheet;
import boltlore.walking.RouteRule;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What stores hand out, in walking order, and what goes into which bag. */
public final class PickingTrade extends Trade {

    private static final Map<String, RouteRule> RULES = new LinkedHashMap<>();

    static {
        for (RouteRule rule : RouteRule.values()) {
            RULES.put(rule.name().toLowerCase(Locale.ROOT).replace('_', '-'), rule);
        }
    }

    private static final TradeOption<RouteRule> WALK = TradeOption.of(
            "--walk",
            "RULE",
            "List the bins as that rule walks by them, where stores.json says where the aisles lie: "
                    + String.join(", ", RULES.keySet()) + ".",
            PickingTrade::rule);

    public PickingTrade() {
        super(
                "picking",
                Room.STORES,
                "Write the picking list of each order: what to take from which bin, from coating and from outside the kit,"
                        + " and what goes into which bag.",
                "Nothing of these orders can be picked.",
                List.of(PickingFinding.values()),
                List.of(WALK));
    }

    @Override
    public Outcome<List<TradeResult>> work(List<KitInWork> kits, Given options) {
        return Outcome.sound(kits.stream().map(kit -> work(kit, options)).toList());
    }

    /** The rule of that name, as it is typed. */
    public static Outcome<RouteRule> rule(String text) {
        RouteRule rule = RULES.get(text);
        return rule == null
                ? Outcome.faulty(Fault.of("--walk", "'" + text + "'", String.join(", ", RULES.keySet()), ""))
                : Outcome.sound(rule);
    }

    private static TradeResult work(KitInWork kit, Given options) {
        PickingList list = options.get(WALK)
                .map(rule -> list(kit).walkedBy(rule, Walk.of(kit.catalogue())))
                .orElseGet(() -> list(kit));
        Findings findings = list.findings(kit);
        Sheet sheet = Sheet.always(() -> PickingReport.compose(kit, list, findings));
        return new TradeResult(kit.order().name(), findings, List.of(sheet));
    }

    /** The bill of what ships whatever is decided: without brackets that carry nothing and of which nobody has decided yet. */
    public static Bill sure(KitInWork kit) {
        return Undecided.sure(kit.plan(), kit.bill());
    }

    /** What is picked for the kit, which packing and shipping go by as well. */
    public static PickingList list(KitInWork kit) {
        return kit.once(PickingList.class, own -> PickingList.of(own.plan(), own.bill()));
    }
}
