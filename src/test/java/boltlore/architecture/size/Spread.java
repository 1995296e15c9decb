package boltlore.architecture.size;

import java.util.List;

/** How a set of sizes spreads; each figure is a size that occurs (nearest rank). */
record Spread(int count, int median, int p90, int largest) {

    static Spread of(List<Integer> sizes) {
        List<Integer> sorted = sizes.stream().sorted().toList();
        return new Spread(sorted.size(), rank(sorted, 50), rank(sorted, 90), rank(sorted, 100));
    }

    private static int rank(List<Integer> sorted, int percent) {
        return sorted.get((sorted.size() * percent + 99) / 100 - 1);
    }

    @Override
    public String toString() {
        return count + ": median " + median + ", nine in ten up to " + p90 + ", largest " + largest;
    }
}
