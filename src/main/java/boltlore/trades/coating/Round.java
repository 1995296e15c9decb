package boltlore.trades.coating;

import boltlore.order.Order;
import java.util.List;
import java.util.stream.Stream;

/**
 * Orders that are needed within the same days and go through the colours once together.
 *
 * @param orders earliest need first
 * @param batches for the own ovens
 * @param sendOuts to outside coaters
 * @param runs of the booths, in the order that the powders are sprayed
 * @param shortest whether no other order of the powders costs less to change
 */
public record Round(
        int number,
        List<Order> orders,
        List<OvenBatch> batches,
        List<SendOut> sendOuts,
        List<PowderRun> runs,
        boolean shortest) {

    public Stream<OvenLoad> loads() {
        return runs.stream().flatMap(PowderRun::loads);
    }

    /** Sums over all queues. */
    public int leastLoads() {
        return runs.stream()
                .flatMap(run -> run.queues().stream())
                .mapToInt(CureQueue::leastLoads)
                .sum();
    }
}
