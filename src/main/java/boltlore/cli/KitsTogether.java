package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.bill.Bill;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.findings.Finding;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.FoundBy;
import boltlore.trades.KitInWork;
import boltlore.trades.StoppedOrder;
import boltlore.trades.orders.KitTrades;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Orders that are worked on together, resolved; each is there once. */
record KitsTogether(CatalogueSession session, List<OrderKit> kits) {

    static Outcome<KitsTogether> read(CatalogueSession session, List<Path> files) {
        KitsTogether read = new KitsTogether(session, new ArrayList<>());
        List<Fault> faults = new ArrayList<>();
        for (Path file : files) {
            Outcome<OrderKit> kit =
                    session.kit(file, false).then(each -> read.once(file, each, "Give each order once."));
            faults.addAll(kit.faults());
            if (kit instanceof Outcome.Sound<OrderKit> sound) {
                read.kits.add(sound.value());
            }
        }
        return faults.isEmpty() ? Outcome.sound(read) : Outcome.faulty(faults);
    }

    FamilyPlan plan(Bill bill) {
        return session.plan(bill.order().family());
    }

    private Outcome<OrderKit> once(Path file, OrderKit kit, String advice) {
        String name = kit.order().name();
        if (kits.stream().noneMatch(other -> other.order().name().equals(name))) {
            return Outcome.sound(kit);
        }
        String found = "order " + name + ", which is among the orders already";
        return Outcome.faulty(Fault.of(file.toString(), found, "an order that is not there yet", advice));
    }

    /** Kits of the orders that nothing stops, for the trades to work on. */
    List<KitInWork> inWork() {
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        return bills().stream()
                .map(bill -> new KitInWork(plan(bill), bill, today)
                        .beside(OrderKit.beside(session.resolver(), bill.order())))
                .toList();
    }

    /** Orders that something stops, which stay out of what is made of the others. */
    List<OrderKit> stopped() {
        return kits.stream().filter(kit -> !kit.issuesSheets()).toList();
    }

    /** The same for the sheets of those others, each with what stops it. */
    List<StoppedOrder> stoppedOrders() {
        return stopped().stream()
                .map(kit -> new StoppedOrder(
                        kit.order(),
                        found(kit).findings().all().stream()
                                .filter(Finding::stops)
                                .map(finding -> finding.kind().title("en"))
                                .distinct()
                                .collect(Collectors.joining(", "))))
                .toList();
    }

    /** What stops the kits that are worked on, whichever trade finds it, by orders' names; trades look at several at once. */
    Map<String, KitTrades> tradesOfEach() {
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        Map<String, KitTrades> each = new ConcurrentHashMap<>();
        kits.parallelStream()
                .forEach(kit -> bill(kit)
                        .forEach(bill -> each.put(
                                kit.order().name(),
                                KitTrades.of(new KitInWork(plan(bill), bill, today), kit.misfits()))));
        return each;
    }

    /** What the rules found of an order. */
    static FoundBy found(OrderKit kit) {
        return KitTrades.byRules(kit.resolution(), kit.misfits(), kit.order());
    }

    /** Bills of the orders that nothing stops. */
    List<Bill> bills() {
        return kits.stream().flatMap(KitsTogether::bill).toList();
    }

    static Stream<Bill> bill(OrderKit kit) {
        return kit.issuesSheets() ? Stream.ofNullable(kit.bill()) : Stream.of();
    }
}
