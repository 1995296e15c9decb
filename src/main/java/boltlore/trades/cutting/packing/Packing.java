package boltlore.trades.cutting.packing;

import java.util.List;

/**
 * A way to cut all that is wanted.
 *
 * @param cost of the bars that are bought
 * @param bound cost that no way can be under
 */
public record Packing(List<CuttingPattern> bars, long cost, long bound) {

    public Packing {
        bars = List.copyOf(bars);
    }

    /** Whether no way can cost less. */
    public boolean proven() {
        return cost == bound;
    }
}
