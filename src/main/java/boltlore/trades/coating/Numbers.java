package boltlore.trades.coating;

import java.util.ArrayList;
import java.util.List;

/** Gives batches with send-outs, runs and loads their numbers, each kind from 1. */
final class Numbers {

    private int batches;
    private int runs;
    private int loads;

    Numbers() {}

    /** Goes on from the numbers of a plan; its runs are numbered anew. */
    Numbers(CoatPlan plan) {
        plan.batches().forEach(batch -> batches = Math.max(batches, batch.number()));
        plan.sendOuts().forEach(sendOut -> batches = Math.max(batches, sendOut.number()));
        plan.loads().forEach(load -> loads = Math.max(loads, load.number()));
    }

    int batch() {
        return ++batches;
    }

    /** The runs with their numbers, and numbers for the loads that have none. */
    List<PowderRun> given(List<PowderRun> without) {
        List<PowderRun> numbered = new ArrayList<>();
        for (PowderRun run : without) {
            List<CureQueue> queues = run.queues().stream().map(this::given).toList();
            numbered.add(new PowderRun(++runs, run.powder(), run.booth(), run.changeOver(), queues));
        }
        return List.copyOf(numbered);
    }

    private CureQueue given(CureQueue queue) {
        return queue.with(queue.loads().stream()
                .map(load -> load.number() == 0 ? load.numbered(++loads) : load)
                .toList());
    }
}
