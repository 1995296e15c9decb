package boltlore.trades.coating;

import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Oven;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Pieces that do not go into the oven even alone, and why. */
public record TooBig(BatchRow row, String why) {

    /** Empty where one piece fits: its sides, longest to longest, and all load limits. */
    static Optional<TooBig> of(BatchRow row, Oven oven) {
        List<String> why = why(row.coat(), row.massKg(), oven);
        return why.isEmpty() ? Optional.empty() : Optional.of(new TooBig(row, String.join("; ", why)));
    }

    /** Why one piece of that mass does not go in; empty where it does. */
    static List<String> why(CoatingSpec coat, BigDecimal massKg, Oven oven) {
        List<String> why = new ArrayList<>();
        EnvelopeMm envelope = coat.envelope();
        if (envelope != null && !envelope.goesInto(oven.inside())) {
            why.add(written(envelope) + " does not go into " + written(oven.inside()));
        }
        why.addAll(LoadSize.of(coat, massKg).beyond(LoadSize.limits(oven)));
        return why;
    }

    private static String written(EnvelopeMm size) {
        return size.length() + " × " + size.width() + " × " + size.height() + " mm";
    }
}
