package boltlore.cli;

import boltlore.findings.Finding;
import boltlore.report.StopsAtHead;
import boltlore.report.StopsAtHead.Stop;
import boltlore.trades.KitFinding;
import boltlore.trades.TradeResult;
import boltlore.trades.orders.KitTrades;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** What one trade writes of orders, with whatever any trade found that stops them at the head. */
final class StoppedSheets {

    private final String trade;
    private final Map<String, KitTrades> each;

    StoppedSheets(String trade, KitsTogether kits) {
        this.trade = trade;
        this.each = kits.tradesOfEach();
    }

    /** Whether some order is stopped, be it by another trade; what only its shipping waits for stops nothing before. */
    boolean any() {
        return each.values().stream()
                .flatMap(trades -> trades.stops(trade))
                .anyMatch(finding -> !KitTrades.ofShipping(finding));
    }

    /**
     * What the trade itself found comes first, as its options have it.
     *
     * @param order the only one that the result is of, or empty
     */
    TradeResult headed(TradeResult result, String order) {
        Stream<Stop> own = result.findings().all().stream()
                .filter(finding -> finding.stops() && finding.kind() != KitFinding.ORDER_STOPPED)
                .map(finding -> new Stop("", finding));
        Stream<Stop> others = each.keySet().stream()
                .sorted()
                .filter(name -> order.isEmpty() || name.equals(order))
                .flatMap(name -> others(name).map(finding -> new Stop(order.isEmpty() ? name : "", finding)));
        List<Stop> stops = Stream.concat(own, others).toList();
        return result.each(
                report -> StopsAtHead.on(report, stops, order.isEmpty() ? each.keySet() : Set.of()),
                report -> StopsAtHead.forCustomers(report, KitTrades.unsent(report, stops)));
    }

    private Stream<Finding> others(String name) {
        KitTrades trades = each.get(name);
        return trades == null
                ? Stream.of()
                : trades.found().stream()
                        .filter(by -> !by.by().equals(trade))
                        .flatMap(by -> by.findings().all().stream())
                        .filter(Finding::stops);
    }
}
