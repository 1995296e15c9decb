package boltlore.cli;

import boltlore.book.db.Place;
import boltlore.book.orders.KitStops;
import boltlore.book.stores.PickLine;
import boltlore.faults.Outcome;
import boltlore.trades.picking.PickingTrade;
import boltlore.trades.picking.Walk;
import boltlore.walking.RouteRule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is left to pick. */
@Command(
        name = "list",
        description = "List what is left to pick for some orders together, in walking order, and how far the walk is.")
final class PickList extends FrozenCommand {

    @Mixin
    private Listing listing = new Listing();

    @Parameters(arity = "1..*", paramLabel = "ORDER", description = "Numbers of the orders.")
    private List<String> orders = new ArrayList<>();

    @Option(
            names = "--walk",
            paramLabel = "RULE",
            description = "Walk by that rule: s-shape, return, midpoint, largest-gap, combined, shortest.")
    private @Nullable String rule;

    @Option(names = "--all", description = "What is picked already too.")
    private boolean all;

    @Override
    Outcome<Integer> answer(Screen screen, Place place) {
        HeadStart.forKits();
        return orders(orders)
                .then(names -> rule().then(by -> inStores(
                        place,
                        (book, catalogue) -> frozen(
                                book,
                                catalogue,
                                (reading, kits) -> kits.of(names).then(found -> {
                                    List<PickLine> lines = found.stream()
                                            .flatMap(kit -> PickLine.of(reading, kit).stream())
                                            .filter(line -> all || line.left().signum() > 0)
                                            .toList();
                                    SortedMap<String, List<String>> stops = KitStops.of(reading, names.stream());
                                    if (!json()) {
                                        stopped(screen, stops);
                                    }
                                    return told(screen, lines, stops, Walk.of(catalogue), by);
                                })))));
    }

    /** What stops orders of a list, before the list. */
    static void stopped(Screen screen, SortedMap<String, List<String>> stops) {
        stops.forEach((order, all) -> all.forEach(stop -> screen.wrapped(0, order + ": " + stop)));
    }

    private Outcome<Optional<RouteRule>> rule() {
        return rule == null
                ? Outcome.sound(Optional.empty())
                : PickingTrade.rule(rule).then(found -> Outcome.sound(Optional.of(found)));
    }

    private Outcome<Integer> told(
            Screen screen,
            List<PickLine> lines,
            SortedMap<String, List<String>> stops,
            Walk walk,
            Optional<RouteRule> by) {
        List<String> bins = lines.stream().map(line -> line.part().bin()).toList();
        Comparator<String> order = by.map(one -> walk.order(one, bins)).orElse(walk.order());
        List<PickLine> sorted = lines.stream()
                .sorted(Comparator.comparing((PickLine line) -> line.part().bin(), order)
                        .thenComparing(PickLine::key)
                        .thenComparing(PickLine::order))
                .toList();
        Outcome<Integer> done = listed(
                screen,
                listing,
                sorted,
                line -> PickCommand.asJson(line).putIfAny("stops", stops.getOrDefault(line.order(), List.of())),
                PickCommand::says,
                "All is picked.");
        if (!json()) {
            walk.lengths(bins)
                    .filter(lengths -> !sorted.isEmpty())
                    .ifPresent(lengths -> screen.wrapped(
                            0,
                            sorted.size() + (sorted.size() == 1 ? " line. Walk: " : " lines. Walk: ")
                                    + metres(by.map(lengths::of).orElse(lengths.asListed()))
                                    + " m, at the shortest " + metres(lengths.of(RouteRule.SHORTEST)) + " m."));
        }
        return done;
    }

    private static long metres(long mm) {
        return Math.round(mm / 1000.0);
    }
}
