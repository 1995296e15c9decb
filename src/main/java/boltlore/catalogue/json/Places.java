package boltlore.catalogue.json;

import boltlore.json.Spot;
import java.util.IdentityHashMap;
import org.jspecify.annotations.Nullable;

/** Where each record was written, so that checks across files can say so. */
final class Places {

    private final IdentityHashMap<Object, Spot> spots = new IdentityHashMap<>();

    /** The record itself, remembered with its place. */
    <T> T put(T record, Spot spot) {
        spots.put(record, spot);
        return record;
    }

    /** Whether the record was put, which those that could not be read whole may not be. */
    boolean know(Object record) {
        return spots.containsKey(record);
    }

    /** @throws IllegalArgumentException for a record that was never put */
    Spot of(@Nullable Object record) {
        Spot spot = spots.get(record);
        if (spot == null) {
            throw new IllegalArgumentException("No place of " + record);
        }
        return spot;
    }
}
