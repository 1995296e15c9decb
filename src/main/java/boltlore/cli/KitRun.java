package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.bill.Bill;
import boltlore.exports.Exports;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.order.Order;
import boltlore.report.Workbook;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.costing.quote.Asked;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.orders.FurtherSheets;
import boltlore.trades.orders.OrderSheets;
import boltlore.trades.orders.SheetFormats;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Resolves many order files, several at once, and writes the sheets of those that nothing stops. Of each kit no more is
 * kept than what is told of it: a folder may hold a thousand orders.
 */
final class KitRun {

    /** An order file, and what was read from it. */
    private record Given(Path file, Outcome<Order> order) {}

    private final Bench bench;
    private final Path out;
    private final boolean takeUsual;
    private final Function<Order, Asked> asked;
    private final BiFunction<FamilyPlan, OrderPricing, FurtherSheets> further;
    private final Function<Kitted, String> told;

    /**
     * @param asked the day on which an order is priced
     * @param further what is written beside the sheets that each order needs
     */
    KitRun(
            Bench bench,
            Path out,
            boolean takeUsual,
            Function<Order, Asked> asked,
            BiFunction<FamilyPlan, OrderPricing, FurtherSheets> further,
            Function<Kitted, String> told) {
        this.bench = bench;
        this.out = out;
        this.takeUsual = takeUsual;
        this.asked = asked;
        this.further = further;
        this.told = told;
    }

    /** What became of each file, in the order given. */
    List<Finished> of(List<Path> files, Progress progress) {
        List<Given> all =
                files.stream().map(file -> new Given(file, bench.order(file))).toList();
        Map<String, Path> owners = owners(all);
        List<Finished> finished = all.parallelStream()
                .map(given -> {
                    Finished one = finish(given, owners);
                    progress.oneMore();
                    return one;
                })
                .toList();
        progress.end();
        return finished;
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

    private Finished finish(Given given, Map<String, Path> owners) {
        Outcome<OrderKit> outcome = bench.kit(given.file(), given.order(), takeUsual);
        if (!(outcome instanceof Outcome.Sound<OrderKit> sound)) {
            return Finished.refused(outcome.faults());
        }
        OrderKit kit = sound.value();
        Path owner = owners.getOrDefault(kit.order().name(), given.file());
        return owner.equals(given.file()) ? sheets(kit) : twice(given.file(), kit, owner);
    }

    private static Finished twice(Path file, OrderKit kit, Path owner) {
        String found = "order '" + kit.order().name() + "', which is also in " + owner;
        return Finished.refused(
                List.of(Fault.of(file.toString(), found, "one file for each order", "Give one of them alone")));
    }

    private Finished sheets(OrderKit kit) {
        Bill bill = kit.bill();
        OrderPricing priced = bill == null ? null : OrderPricing.of(bill, bench.catalogue(), asked.apply(kit.order()));
        if (priced == null || !kit.issuesSheets()) {
            return new Finished(told.apply(new Kitted(kit, priced, List.of(), List.of())), List.of(), Exit.STOPPED);
        }
        return written(kit, priced, bench.plan(kit.order().family()));
    }

    private Finished written(OrderKit kit, OrderPricing priced, FamilyPlan plan) {
        FurtherSheets beside = further.apply(plan, priced);
        List<Supplier<Workbook>> books = new ArrayList<>(OrderSheets.of(plan, priced));
        books.addAll(beside.workbooks());
        Outcome<List<Path>> outcome = Exports.write(out.resolve(kit.order().name()), SheetFormats.ofEach(books));
        List<Path> written = outcome instanceof Outcome.Sound<List<Path>> paths ? paths.value() : List.of();
        int exit = beside.stops().isEmpty() ? Exit.OK : Exit.STOPPED;
        return new Finished(
                told.apply(new Kitted(kit, priced, beside.stops(), written)),
                outcome.faults(),
                outcome.faults().isEmpty() ? exit : Exit.NOT_WRITTEN);
    }
}
