package boltlore.trades.coating;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Masks of one kind and size for one run.
 *
 * @param spots all places that they cover in the run
 * @param mostInOneLoad the fewest that will do where they go round from load to load
 */
public record MasksToFetch(BareSpots spots, int mostInOneLoad) {

    private record Sort(BareSpots spots) {}

    /** By kind and size; a piece with two coats in one run is counted for each. */
    public static List<MasksToFetch> of(PowderRun run) {
        Map<Sort, Integer> most = new HashMap<>();
        run.loads()
                .forEach(load ->
                        masked(load.rows()).forEach(spots -> most.merge(sort(spots), spots.count(), Math::max)));
        List<BatchRow> rows = run.loads().flatMap(load -> load.rows().stream()).toList();
        List<MasksToFetch> masks = new ArrayList<>();
        masked(rows).forEach(spots -> masks.add(new MasksToFetch(spots, most.getOrDefault(sort(spots), 0))));
        return List.copyOf(masks);
    }

    private static Stream<BareSpots> masked(List<BatchRow> rows) {
        return BareSpots.of(rows).stream().filter(BareSpots::masked);
    }

    private static Sort sort(BareSpots spots) {
        return new Sort(new BareSpots(spots.kind(), spots.size(), true, 0));
    }
}
