package boltlore.trades.cutting.packing;

import java.util.Arrays;
import java.util.stream.IntStream;

/** A bar of one of the stocks, and how many of each kind come off it. */
public final class CuttingPattern {

    private final int stock;
    private final int[] counts;

    CuttingPattern(int stock, int[] counts) {
        this.stock = stock;
        this.counts = counts.clone();
    }

    /** Place of its stock in the task. */
    public int stock() {
        return stock;
    }

    /** How many of the kind at that place in the task. */
    public int of(int kind) {
        return counts[kind];
    }

    int[] counts() {
        return counts.clone();
    }

    int pieces() {
        return IntStream.of(counts).sum();
    }

    CuttingPattern on(int otherStock) {
        return new CuttingPattern(otherStock, counts);
    }

    CuttingPattern less(int[] taken) {
        int[] rest = counts();
        Arrays.setAll(rest, kind -> counts[kind] - taken[kind]);
        return new CuttingPattern(stock, rest);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CuttingPattern pattern
                && pattern.stock == stock
                && Arrays.equals(pattern.counts, counts);
    }

    @Override
    public int hashCode() {
        return 31 * stock + Arrays.hashCode(counts);
    }

    @Override
    public String toString() {
        return stock + ":" + Arrays.toString(counts);
    }
}
