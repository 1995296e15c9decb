package boltlore.trades.scheduling;

import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Part;
import boltlore.trades.KitInWork;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.CoatPlanner;
import boltlore.trades.coating.PowderRun;
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
 * The own oven's work for one order as steps: a powder run with all its loads is one job, with the longest change of powder
 * before it, whatever was sprayed before. So no order of the runs of several orders takes longer than is counted. A run begins
 * when the last of its pieces is there, and what needs one of them waits for the run.
 */
final class RunSteps {

    private final StepNetwork network;
    private final Map<StepKey, List<StepKey>> bringing = new LinkedHashMap<>();
    private final Map<StepKey, Integer> coats = new HashMap<>();

    private RunSteps(StepNetwork network) {
        this.network = network;
    }

    /** The runs of the order coated alone. */
    static void add(StepNetwork network, KitInWork kit) {
        RunSteps steps = new RunSteps(network);
        CoatPlan plan = CoatPlanner.plan(List.of(kit.bill()), kit.catalogue());
        plan.runs().forEach(run -> steps.add(run, minutes(run, kit.workshop().coating())));
        steps.waitForThem();
    }

    /** Of all its loads, after the longest change of powder that the shop knows. */
    static int minutes(PowderRun run, CoatingShop shop) {
        int change = Math.max(
                shop.changeOvers().toDarker().minutes(),
                shop.changeOvers().toLighter().minutes());
        return change
                + run.queues().stream()
                        .flatMapToInt(queue -> queue.loads().stream().mapToInt(queue::minutesOf))
                        .sum();
    }

    private void waitForThem() {
        for (StepKey key : network.keys()) {
            if (key.run() == 0) {
                Set<StepKey> before = network.after(key);
                List.copyOf(before).stream()
                        .flatMap(needed -> bringing.getOrDefault(needed, List.of()).stream())
                        .forEach(before::add);
            }
        }
    }

    /** Pieces into which coated ones go come later, so they take the run a second time: that is the safe side. */
    private void add(PowderRun run, int minutes) {
        Map<Integer, Set<StepKey>> byCoatsBefore = new TreeMap<>();
        run.loads()
                .flatMap(load -> load.rows().stream())
                .flatMap(row -> coated(row.part(), row.finish().name()).stream())
                .forEach(piece -> byCoatsBefore
                        .computeIfAbsent(coatsBefore(piece), none -> new LinkedHashSet<>())
                        .add(piece));
        if (byCoatsBefore.isEmpty()) {
            byCoatsBefore.put(0, Set.of());
        }
        byCoatsBefore.forEach((before, pieces) -> {
            StepKey key = new StepKey(Step.What.COAT, "", String.valueOf(before), run.number());
            Set<StepKey> waitsFor = new LinkedHashSet<>();
            for (StepKey piece : pieces) {
                waitsFor.addAll(piece.what() == Step.What.COAT ? network.after(piece) : Set.of(piece));
                List<StepKey> runs = bringing.computeIfAbsent(piece, none -> new ArrayList<>());
                waitsFor.addAll(runs);
                runs.add(key);
            }
            network.addRun(key, waitsFor, minutes);
        });
    }

    /** The step after which the part lies ready coated, but for its run; none of a described one-off. */
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
