package boltlore.trades.scheduling;

import boltlore.catalogue.Part;
import boltlore.trades.KitInWork;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.CoatPlanner;
import boltlore.trades.coating.CureQueue;
import boltlore.trades.coating.OvenLoad;
import boltlore.trades.coating.Timetable;
import boltlore.trades.costing.path.Step;
import boltlore.trades.scheduling.StepNetwork.StepKey;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The own oven's loads of one order as steps. A load is cured when the last of its pieces is there, and what needs one of
 * them waits for the load.
 */
final class LoadSteps {

    private final StepNetwork network;
    private final Map<StepKey, List<StepKey>> bringing = new LinkedHashMap<>();
    private final Map<StepKey, Integer> coats = new HashMap<>();

    private LoadSteps(StepNetwork network) {
        this.network = network;
    }

    /** The loads of the order coated alone. */
    static void add(StepNetwork network, KitInWork kit) {
        LoadSteps steps = new LoadSteps(network);
        CoatPlan plan = CoatPlanner.plan(List.of(kit.bill()), kit.catalogue());
        Map<Integer, Integer> minutes = Timetable.minutes(plan);
        plan.runs().stream()
                .flatMap(run -> run.queues().stream())
                .map(CureQueue::loads)
                .flatMap(List::stream)
                .forEach(load -> steps.add(load, minutes.getOrDefault(load.number(), 0)));
        steps.waitForThem();
    }

    private void waitForThem() {
        for (StepKey key : network.keys()) {
            if (key.load() == 0) {
                Set<StepKey> before = network.after(key);
                List.copyOf(before).stream()
                        .flatMap(needed -> bringing.getOrDefault(needed, List.of()).stream())
                        .forEach(before::add);
            }
        }
    }

    /** Pieces into which coated ones go come later, so they take the load a second time: that is the safe side. */
    private void add(OvenLoad load, int minutes) {
        Map<Integer, Set<StepKey>> byCoatsBefore = new TreeMap<>();
        load.rows().stream()
                .flatMap(row -> coated(row.part(), row.finish().name()).stream())
                .forEach(piece -> byCoatsBefore
                        .computeIfAbsent(coatsBefore(piece), none -> new LinkedHashSet<>())
                        .add(piece));
        if (byCoatsBefore.isEmpty()) {
            byCoatsBefore.put(0, Set.of());
        }
        byCoatsBefore.forEach((before, pieces) -> {
            StepKey key = new StepKey(Step.What.COAT, "", String.valueOf(before), load.number());
            Set<StepKey> waitsFor = new LinkedHashSet<>();
            for (StepKey piece : pieces) {
                waitsFor.addAll(piece.what() == Step.What.COAT ? network.after(piece) : Set.of(piece));
                List<StepKey> loads = bringing.computeIfAbsent(piece, none -> new ArrayList<>());
                waitsFor.addAll(loads);
                loads.add(key);
            }
            network.addLoad(key, waitsFor, minutes);
        });
    }

    /** The step after which the part lies ready coated, but for its load; none of a described one-off. */
    private Optional<StepKey> coated(Part part, String finish) {
        String number = part.number().text();
        return Stream.of(
                        new StepKey(Step.What.COAT, number, finish, 0),
                        new StepKey(Step.What.MAKE, number, "", 0),
                        new StepKey(Step.What.ASSEMBLE, number, "", 0),
                        new StepKey(Step.What.BUY, number, "", 0))
                .filter(network::has)
                .findFirst();
    }

    /** How many coated parts go into one another before it. */
    private int coatsBefore(StepKey piece) {
        Integer known = coats.get(piece);
        if (known != null) {
            return known;
        }
        int most = 0;
        for (StepKey before : network.after(piece)) {
            most = Math.max(most, coatsBefore(before) + (before.what() == Step.What.COAT ? 1 : 0));
        }
        coats.put(piece, most);
        return most;
    }
}
