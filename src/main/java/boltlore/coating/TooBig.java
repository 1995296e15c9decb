package boltlore.coating;

import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Oven;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Pieces that do not go into the oven even alone, and why. */
public record TooBig(BatchRow row, String why) {

    /** Empty where one piece fits: its sides, longest to longest, and all load limits. */
    static Optional<TooBig> of(BatchRow row, Oven oven) {
        List<String> why = new ArrayList<>();
        EnvelopeMm envelope = row.coat().envelope();
        if (envelope != null && !goesIn(envelope, oven.inside())) {
            why.add(written(envelope) + " does not go into " + written(oven.inside()));
        }
        why.addAll(LoadSize.of(row).beyond(LoadSize.limits(oven)));
        return why.isEmpty() ? Optional.empty() : Optional.of(new TooBig(row, String.join("; ", why)));
    }

    private static boolean goesIn(EnvelopeMm piece, EnvelopeMm room) {
        List<Integer> sides = sorted(piece);
        List<Integer> inside = sorted(room);
        return sides.get(0) <= inside.get(0) && sides.get(1) <= inside.get(1) && sides.get(2) <= inside.get(2);
    }

    private static List<Integer> sorted(EnvelopeMm size) {
        return Stream.of(size.length(), size.width(), size.height()).sorted().toList();
    }

    private static String written(EnvelopeMm size) {
        return size.length() + " × " + size.width() + " × " + size.height() + " mm";
    }
}
