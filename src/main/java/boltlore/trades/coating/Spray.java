package boltlore.trades.coating;

import java.util.List;

/** Passes that may be sprayed together: one powder, and none of them waits for another. */
record Spray(String powder, List<Pass> passes) {

    /** Whether a coat here is sprayed on one that the other puts on. */
    boolean follows(Spray below) {
        return passes.stream().anyMatch(pass -> below.passes.stream().anyMatch(pass::follows));
    }
}
