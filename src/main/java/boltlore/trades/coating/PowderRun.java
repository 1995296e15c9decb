package boltlore.trades.coating;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Passes through a booth one after the other with the same powder.
 *
 * @param number by which sheets speak of it, through the whole plan from 1
 * @param changeOver how the booth is cleaned down to this powder first, or null where it is in the booth
 * @param queues by oven and cure window, in the order they are sprayed
 */
public record PowderRun(
        int number, String powder, String booth, @Nullable ChangeOver changeOver, List<CureQueue> queues) {

    public List<Pass> passes() {
        return queues.stream().flatMap(queue -> queue.passes().stream()).toList();
    }

    public Stream<OvenLoad> loads() {
        return queues.stream().flatMap(queue -> queue.loads().stream());
    }

    public int pieces() {
        return loads().mapToInt(OvenLoad::pieces).sum();
    }
}
