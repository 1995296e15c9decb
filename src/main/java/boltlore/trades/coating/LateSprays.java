package boltlore.trades.coating;

import java.util.ArrayList;
import java.util.List;

/** The sprays of a planned round with those that a late order brings, which come where they cost least. */
final class LateSprays {

    private final BoothWays booths;
    private final List<Spray> sprays = new ArrayList<>();
    private final int planned;

    LateSprays(Round base, BoothWays booths) {
        this.booths = booths;
        base.runs().stream()
                .flatMap(run -> run.queues().stream())
                .forEach(queue ->
                        sprays.add(new Spray(queue.passes().get(0).powder().powder(), queue.passes())));
        this.planned = sprays.size();
    }

    /** Whether nothing had to be put between. */
    boolean asBefore() {
        return sprays.size() == planned;
    }

    List<Spray> with(List<OvenBatch> batches) {
        sprays.replaceAll(spray -> move(spray, batches));
        batches.forEach(this::place);
        return List.copyOf(sprays);
    }

    /** The spray with the batches as they are now. */
    private static Spray move(Spray spray, List<OvenBatch> batches) {
        List<Pass> passes = new ArrayList<>();
        for (Pass pass : spray.passes()) {
            batches.stream()
                    .filter(batch -> batch.number() == pass.batch().number())
                    .forEach(batch -> passes.add(new Pass(batch, pass.coat())));
        }
        return new Spray(spray.powder(), List.copyOf(passes));
    }

    /** Each coat of a new batch after the one below it: with others of its powder where there are some, else between. */
    private void place(OvenBatch batch) {
        int below = -1;
        for (Pass pass : Sprays.passes(batch)) {
            int at = at(pass);
            if (at < 0) {
                at = with(pass, below);
            }
            below = at;
        }
    }

    private int at(Pass pass) {
        for (int i = 0; i < sprays.size(); i++) {
            if (sprays.get(i).passes().stream().anyMatch(pass::same)) {
                return i;
            }
        }
        return -1;
    }

    private int with(Pass pass, int below) {
        String powder = pass.powder().powder();
        for (int i = below + 1; i < sprays.size(); i++) {
            if (sprays.get(i).powder().equals(powder)) {
                List<Pass> passes = new ArrayList<>(sprays.get(i).passes());
                passes.add(pass);
                sprays.set(i, new Spray(powder, List.copyOf(passes)));
                return i;
            }
        }
        int cheapest = cheapest(new Spray(powder, List.of(pass)), below + 1);
        sprays.add(cheapest, new Spray(powder, List.of(pass)));
        return cheapest;
    }

    /** Where it costs least from that place on, never between two of the same powder; the earliest of such places. */
    private int cheapest(Spray spray, int from) {
        int best = sprays.size();
        long least = cost(spray, best);
        for (int i = sprays.size() - 1; i >= from; i--) {
            boolean between =
                    i > 0 && sprays.get(i - 1).powder().equals(sprays.get(i).powder());
            if (!between && cost(spray, i) <= least) {
                best = i;
                least = cost(spray, i);
            }
        }
        return best;
    }

    private long cost(Spray spray, int at) {
        List<Spray> with = new ArrayList<>(sprays);
        with.add(at, spray);
        return NearColourOrder.cost(with, booths);
    }
}
