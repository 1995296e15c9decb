package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.bill.Bill;
import boltlore.exports.SheetSet;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.order.Order;
import boltlore.report.SheetFile;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.FoundBy;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeOption;
import boltlore.trades.TradeResult;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteOptions;
import boltlore.trades.orders.KitTrades;
import boltlore.trades.orders.OrderSheets;
import boltlore.trades.orders.SheetFormats;
import boltlore.trades.orders.TradeFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Resolves many order files, several at once, and writes the sheets of those that nothing stops. Of each kit no more is
 * kept than what is told of it: a folder may hold a thousand orders.
 */
final class KitRun {

    /** An order file, and what was read from it. */
    private record Given(Path file, Outcome<Order> order) {}

    private final CatalogueSession session;
    private final Path out;
    private final boolean takeUsual;
    private final boolean all;
    private final boolean jobCards;
    private final boolean html;
    private final Function<KitResult, String> told;
    private final BiFunction<Path, List<SheetSet>, Outcome<List<Path>>> write;

    /**
     * @param all whether the sheets of all trades are written, or only those that go with every kit
     * @param jobCards whether a card is written for each part that the workshop makes
     * @param html whether each report is written as a page too
     */
    KitRun(
            CatalogueSession session,
            Path out,
            boolean takeUsual,
            boolean all,
            boolean jobCards,
            boolean html,
            Function<KitResult, String> told,
            BiFunction<Path, List<SheetSet>, Outcome<List<Path>>> write) {
        this.session = session;
        this.out = out;
        this.takeUsual = takeUsual;
        this.all = all;
        this.jobCards = jobCards;
        this.html = html;
        this.told = told;
        this.write = write;
    }

    /** What became of each file, in the order given. */
    List<OrderOutcome> of(List<Path> files, Progress progress) {
        List<Given> all =
                files.stream().map(file -> new Given(file, session.order(file))).toList();
        Map<String, Path> owners = owners(all);
        List<OrderOutcome> finished = all.parallelStream()
                .map(given -> {
                    OrderOutcome one = finish(given, owners);
                    progress.oneMore();
                    return one;
                })
                .toList();
        progress.end();
        return finished;
    }

    /** What became of one order that was resolved already. */
    OrderOutcome ofResolved(OrderKit kit) {
        return sheets(kit);
    }

    /** Which file an order's name belongs to: the first by name of those that give it. */
    private static Map<String, Path> owners(List<Given> all) {
        Map<String, Path> owners = new HashMap<>();
        for (Given given : all) {
            if (given.order() instanceof Outcome.Sound<Order> sound) {
                owners.merge(
                        sound.value().name(), given.file(), (one, other) -> one.compareTo(other) < 0 ? one : other);
            }
        }
        return owners;
    }

    private OrderOutcome finish(Given given, Map<String, Path> owners) {
        Outcome<OrderKit> outcome = session.kit(given.file(), given.order(), takeUsual);
        if (!(outcome instanceof Outcome.Sound<OrderKit> sound)) {
            return OrderOutcome.refused(outcome.faults());
        }
        OrderKit kit = sound.value();
        Path owner = owners.getOrDefault(kit.order().name(), given.file());
        return owner.equals(given.file()) ? sheets(kit) : twice(given.file(), kit, owner);
    }

    private static OrderOutcome twice(Path file, OrderKit kit, Path owner) {
        String found = "order '" + kit.order().name() + "', which is also in " + owner;
        return OrderOutcome.refused(
                List.of(Fault.of(file.toString(), found, "one file for each order", "Give one of them alone")));
    }

    private OrderOutcome sheets(OrderKit kit) {
        Bill bill = kit.bill();
        FamilyPlan plan = session.plan(kit.order().family());
        KitInWork inWork = bill == null
                ? null
                : new KitInWork(plan, bill, LocalDate.now(ZoneId.systemDefault()))
                        .beside(OrderKit.beside(session.resolver(), kit.order()));
        OrderPricing priced = inWork == null ? null : QuoteOptions.pricing(inWork, TradeOption.Given.NONE);
        if (inWork == null || priced == null || !kit.issuesSheets()) {
            List<FoundBy> found = besides(kit, inWork, priced);
            return new OrderOutcome(
                    told.apply(new KitResult(kit, priced, found, List.of())), earlier(kit), Exit.STOPPED);
        }
        return written(kit, priced, inWork);
    }

    /** Tells of sheets that lie there from when nothing stopped the order. */
    private List<Fault> earlier(OrderKit kit) {
        Path folder = out.resolve(kit.order().name());
        return Files.isDirectory(folder)
                ? write.apply(folder, List.of(new SheetSet(SheetSet.LEADING, of(kit), List.of(), false)))
                        .faults()
                : List.of();
    }

    /** What stops an order hides nothing of what the trades find of the kit that it would be. */
    private static List<FoundBy> besides(OrderKit kit, @Nullable KitInWork inWork, @Nullable OrderPricing priced) {
        return inWork == null || priced == null
                ? List.of(KitTrades.unjudged(KitsTogether.found(kit), kit.order()))
                : KitTrades.of(inWork, kit.misfits()).found();
    }

    private OrderOutcome written(OrderKit kit, OrderPricing priced, KitInWork inWork) {
        KitTrades trades = KitTrades.of(inWork, kit.misfits());
        List<SheetSet> sets = sets(kit, priced, inWork, trades).parallelStream()
                .map(Supplier::get)
                .toList();
        Outcome<List<Path>> outcome = write.apply(out.resolve(kit.order().name()), sets);
        List<Path> written = outcome instanceof Outcome.Sound<List<Path>> paths ? paths.value() : List.of();
        int exit = !trades.stops() ? Exit.OK : Exit.STOPPED;
        return new OrderOutcome(
                told.apply(new KitResult(kit, priced, trades.found(), written)),
                outcome.faults(),
                outcome.faults().isEmpty() ? exit : Exit.NOT_WRITTEN);
    }

    private List<Supplier<SheetSet>> sets(OrderKit kit, OrderPricing priced, KitInWork inWork, KitTrades trades) {
        List<Supplier<SheetSet>> sets = new ArrayList<>();
        sets.add(() -> new SheetSet(SheetSet.LEADING, of(kit), always(priced, inWork, trades), true));
        sets.add(() -> new SheetSet("kit, what is packed", of(kit), packed(inWork, trades), true));
        if (all) {
            trades.results()
                    .keySet()
                    .forEach(trade -> sets.add(() -> set(kit, trade, trades.besidesPackingList(trade))));
        }
        return sets;
    }

    private List<SheetFile> always(OrderPricing priced, KitInWork inWork, KitTrades trades) {
        List<Supplier<List<SheetFile>>> parts = new ArrayList<>();
        parts.add(() -> SheetFormats.writeEach(OrderSheets.prepare(inWork, priced, trades, jobCards), html));
        trades.results().values().forEach(results -> parts.add(() -> files(results, TradeResult.Sheet::always)));
        return parts.parallelStream().flatMap(part -> part.get().stream()).toList();
    }

    /** The packing list where all sheets are written, else the contents list: each takes the other of an earlier run away. */
    private List<SheetFile> packed(KitInWork inWork, KitTrades trades) {
        List<TradeResult> packingList = all ? trades.packingList() : List.of();
        if (!packingList.isEmpty()) {
            return TradeFiles.write(packingList, html);
        }
        return SheetFormats.writeEach(List.of(OrderSheets.contents(inWork, trades)), html).stream()
                .map(file -> file.under(TradeResult.FOR_CUSTOMERS))
                .toList();
    }

    /** What a trade could not make this time takes nothing away that it made before. */
    private SheetSet set(OrderKit kit, String trade, List<TradeResult> results) {
        boolean whole = results.stream().anyMatch(result -> !result.sheets().isEmpty());
        return new SheetSet("kit --all, " + trade, of(kit), files(results, sheet -> !sheet.always()), whole);
    }

    private static List<String> of(OrderKit kit) {
        return List.of(kit.order().name());
    }

    private List<SheetFile> files(List<TradeResult> results, Predicate<TradeResult.Sheet> wanted) {
        return TradeFiles.write(
                results.stream().map(result -> result.only(wanted)).toList(), html);
    }
}
