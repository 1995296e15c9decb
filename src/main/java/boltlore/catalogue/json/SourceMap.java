package boltlore.catalogue.json;

import boltlore.json.SourceLocation;
import java.util.IdentityHashMap;
import org.jspecify.annotations.Nullable;

/** Where each record was written, so that checks across files can say so. */
final class SourceMap {

    private final IdentityHashMap<Object, SourceLocation> spots = new IdentityHashMap<>();

    /** The record itself, remembered with its place. */
    <T> T put(T record, SourceLocation location) {
        spots.put(record, location);
        return record;
    }

    /** Whether the record was put, which those that could not be read whole may not be. */
    boolean know(Object record) {
        return spots.containsKey(record);
    }

    /** @throws IllegalArgumentException for a record that was never put */
    SourceLocation of(@Nullable Object record) {
        SourceLocation location = spots.get(record);
        if (location == null) {
            throw new IllegalArgumentException("No place of " + record);
        }
        return location;
    }
}
