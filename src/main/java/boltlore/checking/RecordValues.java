package boltlore.checking;

import java.lang.reflect.RecordComponent;
import org.jspecify.annotations.Nullable;

/** What a record holds, for checks that go through all records of a catalogue, whatever each is called. */
final class RecordValues {

    private RecordValues() {}

    static @Nullable Object of(Record owner, RecordComponent component) {
        try {
            return component.getAccessor().invoke(owner);
        } catch (ReflectiveOperationException closed) {
            throw new IllegalStateException("A record that cannot be read: " + owner.getClass(), closed);
        }
    }
}
