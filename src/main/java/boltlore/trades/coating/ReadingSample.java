package boltlore.trades.coating;

import java.util.List;

/**
 * How many pieces of a batch are read, and how many of them may fall short before the batch is rejected. The steps are
 * the sampling table of a coated-aluminium specification (film by EN ISO 2360).
 */
public record ReadingSample(int pieces, int acceptUpTo) {

    private record Step(int lotUpTo, ReadingSample sample) {}

    private static final List<Step> STEPS = List.of(
            step(200, 10, 1),
            step(300, 15, 1),
            step(500, 20, 2),
            step(800, 30, 3),
            step(1_300, 40, 3),
            step(3_200, 55, 4),
            step(8_000, 75, 6),
            step(22_000, 115, 8),
            step(Integer.MAX_VALUE, 150, 11));

    /** Up to ten pieces all are read. */
    public static ReadingSample of(int lot) {
        if (lot <= 10) {
            return new ReadingSample(lot, 0);
        }
        return STEPS.stream()
                .filter(step -> lot <= step.lotUpTo())
                .map(Step::sample)
                .findFirst()
                .orElseThrow();
    }

    private static Step step(int lotUpTo, int pieces, int acceptUpTo) {
        return new Step(lotUpTo, new ReadingSample(pieces, acceptUpTo));
    }
}
