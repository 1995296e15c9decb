package boltlore.trades.weighing;

import java.util.Comparator;
import java.util.List;

/** What of the kit weighs most. */
public final class Heaviest {

    private Heaviest() {}

    /** By mass, the heaviest first; equal ones in the order of the bill. */
    public static List<Added> of(Weighing weighing, int most) {
        return weighing.added().stream()
                .sorted(Comparator.comparing(Added::massKg).reversed())
                .limit(most)
                .toList();
    }

    /** By what they put on that axle. */
    public static List<Added> on(Axle axle, Weighing weighing, int wheelbaseMm, int most) {
        return weighing.added().stream()
                .sorted(Comparator.comparing(
                                (Added each) -> each.on(wheelbaseMm).on(axle))
                        .reversed())
                .limit(most)
                .toList();
    }
}
