package boltlore.trades.orders;

import boltlore.explanation.FindingWords;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.resolution.Resolution;
import boltlore.trades.FoundBy;
import boltlore.trades.KitFinding;
import boltlore.trades.KitInWork;
import boltlore.trades.Trade;
import boltlore.trades.TradeResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What all trades make of one kit, and all that they found.
 *
 * @param found first by the rules of the kit, then by each trade
 * @param results of the trades whose sheets go with a kit, by their names and in their order
 */
public record KitTrades(List<FoundBy> found, Map<String, List<TradeResult>> results) {

    public static KitTrades of(KitInWork kit) {
        List<FoundBy> found = new ArrayList<>(List.of(byRules(kit.bill().resolved())));
        Map<String, List<TradeResult>> made = new LinkedHashMap<>();
        for (Trade trade : Trades.ALL) {
            Outcome<List<TradeResult>> worked = trade.work(List.of(kit), trade.forKit());
            found.add(FoundBy.of(trade.name(), findings(worked), kit.order()));
            if (worked instanceof Outcome.Sound<List<TradeResult>> sound) {
                made.put(trade.name(), sound.value());
            }
        }
        return new KitTrades(List.copyOf(found), made);
    }

    /** What keeps the trade from working is found as well: nothing that a trade cannot do is left unsaid. */
    private static Findings findings(Outcome<List<TradeResult>> worked) {
        if (worked instanceof Outcome.Sound<List<TradeResult>> sound) {
            return sound.value().stream().map(TradeResult::findings).reduce(Findings.NONE, Findings::and);
        }
        return worked.faults().stream()
                .map(fault -> Finding.of(
                        KitFinding.NOT_WORKED,
                        fault.file(),
                        "found",
                        fault.found(),
                        "expected",
                        fault.expected(),
                        "advice",
                        fault.advice()))
                .collect(Findings.collected());
    }

    /** What the rules concluded of the kit, or of choices that make none. */
    public static FoundBy byRules(Resolution resolution) {
        FindingWords words = new FindingWords(resolution.choices().family());
        Findings findings = words.of(resolution.findings(), resolution.choices());
        return new FoundBy("kit", findings);
    }

    public boolean stops() {
        return found.stream().anyMatch(by -> by.findings().stops());
    }
}
