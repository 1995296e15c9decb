package boltlore.trades.orders;

import boltlore.explanation.FindingWords;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.findings.Findings;
import boltlore.order.Order;
import boltlore.order.Waiver;
import boltlore.report.Report;
import boltlore.report.StopsAtHead;
import boltlore.resolution.FindingKind;
import boltlore.resolution.Resolution;
import boltlore.trades.FoundBy;
import boltlore.trades.KitFinding;
import boltlore.trades.KitInWork;
import boltlore.trades.Trade;
import boltlore.trades.TradeResult;
import boltlore.trades.costing.sheets.QuotationSheet;
import boltlore.trades.shipping.ShippingTrade;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What all trades make of one kit, and all that they found.
 *
 * @param found first by the rules of the kit, then by each trade
 * @param results of the trades whose sheets go with a kit, by their names and in their order
 */
public record KitTrades(List<FoundBy> found, Map<String, List<TradeResult>> results) {

    /**
     * What all trades make of the kit.
     *
     * @param misfits what of the kit does not fit together
     */
    public static KitTrades of(KitInWork kit, Findings misfits) {
        FoundBy byRules = byRules(kit.bill().resolved(), misfits, kit.order());
        Findings byTrades = misfits;
        List<FoundBy> found = new ArrayList<>();
        Map<String, List<TradeResult>> made = new LinkedHashMap<>();
        for (Trade trade : Trades.ALL) {
            Outcome<List<TradeResult>> worked = trade.work(List.of(kit), trade.forKit());
            Findings findings = findings(worked);
            byTrades = byTrades.and(findings);
            found.add(FoundBy.of(trade.name(), findings, kit.order()));
            if (worked instanceof Outcome.Sound<List<TradeResult>> sound) {
                made.put(trade.name(), sound.value());
            }
        }
        Findings ofKit = byRules.findings().and(waivedInVain(kit.order(), byRules.findings(), byTrades));
        found.add(0, new FoundBy(byRules.by(), ofKit));
        KitTrades all = new KitTrades(List.copyOf(found), made);
        made.replaceAll((trade, results) -> results.stream()
                .map(result -> result.each(report -> all.headed(trade, report), all::headedForCustomers))
                .toList());
        return all;
    }

    /** The report with what stops this order at its head, what its own trade found first. */
    public Report headed(String trade, Report report) {
        return StopsAtHead.on(report, lines(trade));
    }

    /** A report that leaves the house, with a line that says whether it may, and nothing of why. */
    public Report headedForCustomers(Report report) {
        return StopsAtHead.forCustomers(report, unsent(report, lines("")));
    }

    /** Of these stops those that keep the report in the house: a quotation asks what shipping alone still waits for. */
    public static List<StopsAtHead.Stop> unsent(Report report, List<StopsAtHead.Stop> stops) {
        return stops.stream()
                .filter(stop -> !report.file().equals(QuotationSheet.FILE) || !ofShipping(stop.finding()))
                .toList();
    }

    /** Whether only the shipping waits for it. */
    public static boolean ofShipping(Finding finding) {
        return finding.kind().room().equals(ShippingTrade.NAME);
    }

    private List<StopsAtHead.Stop> lines(String trade) {
        return stops(trade).map(finding -> new StopsAtHead.Stop("", finding)).toList();
    }

    /** All that stops this order, what that trade found first. */
    public Stream<Finding> stops(String trade) {
        return found.stream()
                .sorted(Comparator.comparing(by -> !by.by().equals(trade)))
                .flatMap(by -> by.findings().all().stream())
                .filter(Finding::stops)
                .distinct();
    }

    /** Waivers that speak of nothing that the rules or any trade found; told only here, where all have looked. */
    private static Findings waivedInVain(Order order, Findings byRules, Findings byTrades) {
        return order.waived().stream()
                .filter(waiver -> byTrades.all().stream().noneMatch(finding -> FoundBy.speaksOf(waiver, finding)))
                .filter(waiver -> byRules.all().stream().noneMatch(finding -> replaced(waiver, finding)))
                .map(waiver ->
                        waiver.subject().isEmpty() ? waiver.finding() : waiver.finding() + ": " + waiver.subject())
                .map(waiver -> Finding.of(KitFinding.WAIVER_WITHOUT_FINDING, waiver, "waiver", waiver))
                .collect(Findings.collected());
    }

    /** Whether the resolution has put the waiver in the place of what it speaks of. */
    private static boolean replaced(Waiver waiver, Finding finding) {
        String waived = waiver.finding() + ": " + waiver.subject();
        return finding.kind() == FindingKind.WAIVED
                && (waiver.subject().isEmpty()
                        ? finding.subject().startsWith(waived)
                        : finding.subject().equals(waived));
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

    /** What the rules concluded of the kit, or of choices that make none, and what of it does not fit together. */
    public static FoundBy byRules(Resolution resolution, Findings misfits, Order order) {
        FindingWords words = new FindingWords(resolution.choices().family());
        Findings findings = words.of(resolution.findings(), resolution.choices());
        return new FoundBy("kit", findings.and(FoundBy.of("kit", misfits, order).findings()));
    }

    /** What the rules found of choices that make no kit, and that no trade has anything to look at. */
    public static FoundBy unjudged(FoundBy byRules, Order order) {
        String trades = Trades.ALL.stream().map(Trade::name).collect(Collectors.joining(", "));
        return new FoundBy(
                byRules.by(),
                byRules.findings()
                        .and(Stream.of(Finding.of(
                                        KitFinding.TRADES_WITHOUT_KIT,
                                        order.name(),
                                        "order",
                                        order.name(),
                                        "trades",
                                        trades))
                                .collect(Findings.collected())));
    }

    /** What says to the customer what lies in which crate; empty where nothing is packed. */
    public List<TradeResult> packingList() {
        return of(ShippingTrade.NAME, KitTrades::isPackingList).stream()
                .filter(result -> !result.sheets().isEmpty())
                .toList();
    }

    /** A trade's sheets without that list. */
    public List<TradeResult> besidesPackingList(String trade) {
        return trade.equals(ShippingTrade.NAME)
                ? of(trade, sheet -> !isPackingList(sheet))
                : results.getOrDefault(trade, List.of());
    }

    private List<TradeResult> of(String trade, Predicate<TradeResult.Sheet> wanted) {
        return results.getOrDefault(trade, List.of()).stream()
                .map(result -> result.only(wanted))
                .toList();
    }

    /** Of sheets of the shipping, whose papers for customers are made already: others would be made to ask for their names. */
    private static boolean isPackingList(TradeResult.Sheet sheet) {
        return sheet.folder().equals(TradeResult.FOR_CUSTOMERS)
                && sheet.report().get().file().equals(ShippingTrade.PACKING_LIST);
    }

    public boolean stops() {
        return found.stream().anyMatch(by -> by.findings().stops());
    }
}
