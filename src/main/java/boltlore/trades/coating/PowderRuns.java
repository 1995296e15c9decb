package boltlore.trades.coating;

import boltlore.catalogue.Oven;
import boltlore.catalogue.PowderCoat;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes runs and their oven queues of sprays that stand in order: neighbours of one powder are one run. */
final class PowderRuns {

    /** Hangs what waits in one queue. */
    interface Hanger {
        List<OvenLoad> loads(List<Pass> passes, Oven oven);
    }

    private record Key(int turn, Oven oven, int cureMetalC, int minutes) {}

    private BoothWays booths;
    private final Hanger hanger;
    private final List<PowderRun> runs = new ArrayList<>();

    private PowderRuns(BoothWays booths, Hanger hanger) {
        this.booths = booths;
        this.hanger = hanger;
    }

    static List<PowderRun> group(List<Spray> inOrder, BoothWays booths, Hanger hanger) {
        PowderRuns runs = new PowderRuns(booths, hanger);
        int first = 0;
        for (int i = 1; i <= inOrder.size(); i++) {
            if (i == inOrder.size()
                    || !inOrder.get(i).powder().equals(inOrder.get(first).powder())) {
                runs.add(inOrder.subList(first, i));
                first = i;
            }
        }
        return List.copyOf(runs.runs);
    }

    private void add(List<Spray> sprays) {
        String powder = sprays.get(0).powder();
        boolean ready = powder.equals(booths.inBooth()) || booths.elsewhere(powder);
        ChangeOver changeOver = ready ? null : booths.costs().between(booths.inBooth(), powder);
        runs.add(new PowderRun(runs.size() + 1, powder, booths.boothOf(powder), changeOver, queues(sprays)));
        booths = booths.holding(booths.after(booths.inBooth(), powder));
    }

    /** Passes of one oven and cure window; a coat that goes on one of the same run takes its own turn after it. */
    private List<CureQueue> queues(List<Spray> sprays) {
        Map<Key, List<Pass>> byKey = new LinkedHashMap<>();
        IdentityHashMap<Spray, Integer> turns = new IdentityHashMap<>();
        for (Spray spray : sprays) {
            int turn = turn(spray, turns);
            turns.put(spray, turn);
            spray.passes()
                    .forEach(pass -> byKey.computeIfAbsent(key(turn, pass), none -> new ArrayList<>())
                            .add(pass));
        }
        return byKey.entrySet().stream()
                .map(entry -> queue(entry.getKey(), List.copyOf(entry.getValue())))
                .toList();
    }

    private static int turn(Spray spray, IdentityHashMap<Spray, Integer> before) {
        return before.entrySet().stream()
                .filter(turn -> spray.follows(turn.getKey()))
                .mapToInt(turn -> turn.getValue() + 1)
                .max()
                .orElse(0);
    }

    private static Key key(int turn, Pass pass) {
        PowderCoat powder = pass.powder();
        return new Key(turn, pass.batch().oven(), powder.cureMetalC(), powder.cureMinutes());
    }

    private CureQueue queue(Key key, List<Pass> passes) {
        List<BatchRow> rows =
                passes.stream().flatMap(pass -> pass.batch().rows().stream()).toList();
        List<OvenLoad> loads = hanger.loads(passes, key.oven());
        return new CureQueue(
                key.oven(), key.cureMetalC(), key.minutes(), passes, loads, LeastLoads.bound(rows, key.oven()));
    }
}
