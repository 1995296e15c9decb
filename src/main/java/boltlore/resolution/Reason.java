package boltlore.resolution;

import boltlore.measure.PartNumber;
import java.util.Comparator;

/** Why a part is in the kit. */
public record Reason(Requirer asker, Way way, PartNumber part) implements Comparable<Reason> {

    private static final Comparator<Reason> BY_PART =
            Comparator.comparing(Reason::part).thenComparing(Reason::way).thenComparing(Reason::asker);

    @Override
    public int compareTo(Reason other) {
        return BY_PART.compare(this, other);
    }
}
