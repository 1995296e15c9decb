package boltlore.trades.coating;

import boltlore.catalogue.EnvelopeMm;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How much a piece takes up as it hangs, in mm: along its rail, across it, and downwards.
 *
 * <p>The longest side that the oven is high enough for hangs down, because powder and air reach a tall piece better than a
 * wide one; of the other two the longer lies along the rail (common practice, no source).
 */
public record Hung(int alongMm, int acrossMm, int downMm) {

    /** Empty where the oven has no room for it in any way that it could hang. */
    public static Optional<Hung> of(EnvelopeMm piece, EnvelopeMm inside) {
        List<Integer> sides = Stream.of(piece.height(), piece.width(), piece.length())
                .sorted()
                .toList();
        return Stream.of(
                        new Hung(sides.get(1), sides.get(0), sides.get(2)),
                        new Hung(sides.get(2), sides.get(0), sides.get(1)),
                        new Hung(sides.get(2), sides.get(1), sides.get(0)))
                .filter(way -> way.goesInto(inside))
                .findFirst();
    }

    private boolean goesInto(EnvelopeMm inside) {
        return downMm <= inside.height() && alongMm <= inside.length() && acrossMm <= inside.width();
    }
}
